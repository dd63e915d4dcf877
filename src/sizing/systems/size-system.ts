import { plainText, typedNumber } from '../../units/typed-number.ts';

/**
 * One way of numbering shoes: sizes as numbers, with how they are printed and what foot they stand for.
 *
 * Lengths are foot lengths in millimetres, not last or inner lengths. Formula sizes are a guide: a box is fetched by
 * what is printed on it.
 */
export interface SizeSystem {
  /** Reads a size as printed or typed. Undefined when it is no size of this system. */
  parse(text: string): number | undefined;
  /** The size as this system prints it; `parse(print(size))` is `size`. */
  print(size: number): string;
  /** The foot a size is meant for, millimetres. */
  foot(size: number): number;
  /** The size a foot falls on by the formula, before rounding. */
  exact(foot: number): number;
  /** The nearest size that is made, ties up. Undefined where the system has none so short or long. */
  size(foot: number): number | undefined;
}

/** A reader for systems in halves: the number alone, or after its own name (`UK 8½`). Refuses other fractions. */
export function readHalves(name: RegExp, from: number, to: number): (text: string) => number | undefined {
  return (text) => {
    const number = typedNumber(plainText(text).replace(name, ''));
    if (number === undefined || number < from || number > to || !Number.isInteger(number * 2)) return undefined;
    return number;
  };
}

/** `size` when it lies in the range that is made. */
export function made(size: number, from: number, to: number): number | undefined {
  return size >= from && size <= to ? size : undefined;
}
