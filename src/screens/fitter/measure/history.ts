/** States one can go back to, each with what changed after it, in words. */
export class History<State> {
  readonly #before: { readonly state: State; readonly what: string }[] = [];

  /** What the last step back would undo; nothing when there is none. */
  get last(): string | undefined {
    return this.#before.at(-1)?.what;
  }

  keep(state: State, what: string): void {
    this.#before.push({ state, what });
  }

  back(): State | undefined {
    return this.#before.pop()?.state;
  }

  clear(): void {
    this.#before.length = 0;
  }
}
