/** A sentence that a language does not have: a bug in a kiosk, and a hole to fill for whoever translates. */
export class NoWords extends Error {
  readonly key: string;
  readonly language: string;
  constructor(key: string, language: string) {
    super(`No words for "${key}" in "${language}"`);
    this.key = key;
    this.language = language;
  }
}
