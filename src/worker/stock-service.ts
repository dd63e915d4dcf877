import type { Box, Shelf } from '../stock/shoe.ts';
import type { BoxMark } from '../stock/today.ts';
import type { Finding } from '../units/result.ts';

/** The stock in use, told in figures: its boxes stay with the worker. */
export interface StockSummary {
  /** ISO date and time, local. */
  readonly asOf: string;
  readonly shoes: number;
  readonly boxes: number;
}

/** What a chosen file holds, before anything is swapped. */
export interface StockOffer extends StockSummary {
  /** Something in it can be swapped in. */
  readonly usable: boolean;
  /** A one-file copy from another tablet, with what was marked there today. */
  readonly isCopy: boolean;
  readonly marks: number;
  /** Lines refused. */
  readonly refused: number;
  /** Boxes of the stock in use that the file does not hold, and boxes that only the file holds. */
  readonly gone: number;
  readonly fresh: number;
  /** Refusals first, each by line; no more than `FINDINGS_SHOWN`. */
  readonly findings: readonly Finding[];
  /** Findings beyond those. */
  readonly more: number;
}

/** All findings can be had as a list; a screen of more than this helps nobody. Our choice. */
export const FINDINGS_SHOWN = 200;

/** Boxes looked for: part of a model's name, a size as printed, the beginning of a shelf. Empty asks for all. */
export interface BoxSearch {
  readonly name: string;
  readonly size: string;
  readonly place: string;
}

export interface FoundBox {
  readonly box: Box;
  readonly name: string;
  readonly shelf: Shelf;
}

export interface FoundBoxes {
  readonly found: readonly FoundBox[];
  /** How many there are, shown or not. */
  readonly of: number;
}

/** Another stock in use. */
export interface StockChange {
  readonly stock: StockSummary;
  /** There was one before it, and no room to keep both: no way leads back to it. */
  readonly beforeLost: boolean;
}

/** How a spreadsheet of the shop's country reads a list. */
export interface ListStyle {
  readonly delimiter: ',' | ';';
  readonly decimal: '.' | ',';
}

/**
 * The stock, kept where it is read: 60,000 boxes would take the screens' thread longer to receive than to show. Only
 * figures, a page of boxes and finished files cross over.
 */
export interface StockService {
  /** The stock this tablet was given last, else the list served at an address. Nothing when there is neither. */
  openStock(served: string): Promise<StockSummary | undefined>;
  /** Reads a list or a one-file copy; changes nothing. `progress` gets 0 to 1. */
  offerStock(file: Blob, asOf: string, progress?: (share: number) => void): Promise<StockOffer>;
  /** Puts the file last offered in the place of the stock, and keeps it; the marks that came with a copy. Throws when it could not be kept: the stock is then as it was. */
  swapStock(): Promise<StockChange & { readonly marks: readonly BoxMark[] }>;
  /** The stock that the last swap put aside, if it could be kept. */
  stockBefore(): Promise<StockSummary | undefined>;
  /** Uses that one again; the present one is put aside in its place, if there is room. */
  backToStockBefore(): Promise<StockChange>;
  /** Lets go of the file last offered. */
  leaveStock(): void | Promise<void>;
  /** Every finding of the file last offered, as a list in one language. */
  findingsList(language: string, style: ListStyle): Promise<Blob>;
  stockSummary(): StockSummary | undefined | Promise<StockSummary | undefined>;
  findBoxes(search: BoxSearch): FoundBoxes | Promise<FoundBoxes>;
  /** Names of models, by id. */
  shoeNames(ids: readonly string[]): Readonly<Record<string, NamedShoe>> | Promise<Readonly<Record<string, NamedShoe>>>;
  /** The stock as a list, less the pairs sold today. */
  stockList(style: ListStyle): Blob | Promise<Blob>;
  /** Stock and today's marks in one file, for another tablet. */
  stockCopy(): Blob | Promise<Blob>;
}

export interface NamedShoe {
  readonly name: string;
  readonly sizeOffset?: number;
}
