/**
 * Tells what an element's owner hands in from what the element itself told it: the owner may be a write behind, and what
 * is typed meanwhile must not be lost.
 */
export class HandedBack<State> {
  #known: string | undefined;
  #told: string[] = [];

  /** The element told its owner this. */
  tell(state: State): void {
    this.#told.push(JSON.stringify(state));
  }

  /** Whether what comes in is news from elsewhere, to be taken over. */
  isNews(state: State): boolean {
    const incoming = JSON.stringify(state);
    const at = this.#told.indexOf(incoming);
    const before = this.#known;
    this.#known = incoming;
    if (at >= 0) {
      this.#told = this.#told.slice(at + 1);
      return false;
    }
    if (incoming === before) return false;
    this.#told = [];
    return true;
  }
}
