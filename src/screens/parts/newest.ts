/**
 * Of several things asked for one after another, only the one asked for last still counts, however late each arrives:
 * the words of a language that somebody chose and chose again must not come upon the next customer.
 *
 * @example
 * const words = new Newest<string>();
 * await Promise.all([words.of(slowly('Wörter')), words.of(quickly('words'))]); // [undefined, 'words']
 */
export class Newest<T> {
  #turn = 0;

  /** What `asked` brings, or `undefined` where something else has been asked for meanwhile. Fails as `asked` does. */
  async of(asked: Promise<T>): Promise<T | undefined> {
    this.#turn += 1;
    const turn = this.#turn;
    const brought = await asked;
    return turn === this.#turn ? brought : undefined;
  }
}
