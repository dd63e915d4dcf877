import type { CardFacts, Copy } from '../card/card.ts';
import type { Shop } from '../card/shop.ts';
import type { Line } from '../pipeline.ts';
import type { SizeAdvice } from '../sizing/advice.ts';
import type { Box } from '../stock/shoe.ts';
import type { BoxMark } from '../stock/today.ts';
import type { Hold, Visit } from '../visit/visit.ts';
import type { BenchLine, BenchOrder, FoundShoe } from './bench-line.ts';
import type { StockService } from './stock-service.ts';

/** What a card is made of, besides the visit. */
export interface CardOrder {
  readonly visit: Visit;
  readonly shop: Shop;
  readonly date: string;
  readonly ticket: string;
  readonly origin: string;
  readonly copy: Copy;
  readonly format: string;
  /** The language the copy is read in. */
  readonly language: string;
  /** Shoe ids in the order of their letters, where letters were given before. */
  readonly letters?: readonly string[];
}

export interface CardSaying {
  readonly facts: CardFacts;
  readonly hold: Hold;
}

/** The work kept off the screens' thread: reading stock, the line from visit to line-up, and drawing cards. */
export interface LineService extends StockService {
  /** What happened to boxes today: everything after counts them. `date` is today, `2026-11-25`. */
  useMarks(marks: readonly BoxMark[], date: string): void | Promise<void>;
  fit(visit: Visit, seed: number): Line | Promise<Line>;
  /** The line with its reasons, less what was set aside, and with what was pulled in. */
  bench(order: BenchOrder): BenchLine | Promise<BenchLine>;
  /** Models by a part of their name. */
  findShoes(typed: string, size: SizeAdvice): readonly FoundShoe[] | Promise<readonly FoundShoe[]>;
  /** Every box of a model, as it stands today. */
  boxesOf(shoe: string): readonly Box[] | Promise<readonly Box[]>;
  /** What the card says, as codes and figures; screens put the words to it. */
  facts(order: CardOrder): CardSaying | Promise<CardSaying>;
  /** The card as HTML for reading, preview and printing, with its style sheets by their addresses. */
  twin(order: CardOrder, styles: readonly string[]): string | Promise<string>;
  /** The card as PDF. */
  pdf(order: CardOrder): Uint8Array | Promise<Uint8Array>;
  /** Loads what cards need ahead of time. */
  warm(language: string): void | Promise<void>;
}
