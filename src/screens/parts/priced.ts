import type { Flow } from '../../flow/format.ts';
import { inCurrency } from '../../flow/in-currency.ts';
import type { Words } from '../../words/words.ts';

/** Words with sums in the shop's money, the same object until something about them changes: new words draw a page anew. */
export class Priced {
  #words: Words | undefined;
  #currency: string | undefined;
  #priced: Words | undefined;

  of(words: Words | undefined, flow: Flow, currency: string | undefined): Words | undefined {
    if (words !== this.#words || currency !== this.#currency) this.#priced = words && inCurrency(words, flow, currency);
    this.#words = words;
    this.#currency = currency;
    return this.#priced;
  }
}
