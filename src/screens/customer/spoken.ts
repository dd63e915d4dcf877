import type { ReactiveControllerHost } from 'lit';
import type { Words } from '../../words/words.ts';
import { setDisplay } from '../parts/display.ts';
import { Newest } from '../parts/newest.ts';

/** Loads the words of a language: of the interview alone, or of everything. */
export type LoadWords = (language: string, all: boolean) => Promise<Words>;

/** The language on the screen and its words: what the page was opened in, then whichever was asked for last. */
export class Spoken {
  readonly #host: ReactiveControllerHost;
  readonly #load: () => LoadWords;
  readonly #home = document.documentElement.lang;
  readonly #newest = new Newest<Words>();
  #language = this.#home;
  #all = false;
  #words: Words | undefined;

  constructor(host: ReactiveControllerHost, load: () => LoadWords) {
    this.#host = host;
    this.#load = load;
  }

  /** The language asked for last: its words may still be on their way. */
  get language(): string {
    return this.#language;
  }

  /** The language the page was opened in. */
  get home(): string {
    return this.#home;
  }

  get words(): Words | undefined {
    return this.#words;
  }

  async speak(language: string): Promise<void> {
    this.#language = language;
    const words = await this.#newest.of(this.#load()(language, this.#all));
    if (!words) return;
    this.#words = words;
    setDisplay({ language, direction: words.direction });
    this.#host.requestUpdate();
  }

  /** The next customer may not need the language of this one. */
  async speakHome(): Promise<void> {
    if (this.#language !== this.#home) await this.speak(this.#home);
  }

  /** All words of the language spoken now, for `take` later. */
  whole(): Promise<Words> {
    return this.#load()(this.#language, true);
  }

  /** From now on all words are loaded. Those of a language left meanwhile are let go for those of the one spoken. */
  async take(words: Words): Promise<void> {
    this.#all = true;
    if (words.language !== this.#language || words.language !== this.#words?.language)
      return this.speak(this.#language);
    this.#words = words;
    this.#host.requestUpdate();
  }
}
