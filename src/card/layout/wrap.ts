import { SOFT_HYPHEN } from '../font/printable.ts';

/** A page so small that not one letter of a text has room. */
export class NoRoom extends Error {
  readonly words: string;
  constructor(words: string) {
    super(`No room for “${words}”`);
    this.words = words;
  }
}

/**
 * Parts text into lines that fit. Breaks at spaces, then after a hyphen or slash, then at a soft hyphen, and a word too
 * long even so between any two characters, so that nothing ever runs off the paper; `cut` is told of it. No-break
 * spaces hold.
 *
 * @example
 * wrap('ab cd', (line) => line.length, 3) // ['ab', 'cd']
 * wrap('abcdef', (line) => line.length, 4) // ['abcd', 'ef']
 */
export function wrap(
  text: string,
  width: (line: string) => number,
  room: number,
  cut: (word: string) => void = () => undefined,
): readonly string[] {
  if (room <= 0) throw new NoRoom(text);
  const lines: string[] = [];
  let line = '';
  const fits = (candidate: string) => width(candidate.trimEnd()) <= room + 1e-6;
  for (const part of parts(text)) {
    if (fits(clean(line + part))) {
      line += part;
      continue;
    }
    if (line !== '') lines.push(ended(line));
    line = part;
    if (!fits(clean(line))) cut(clean(line).trim());
    while (!fits(clean(line))) {
      const head = longest(clean(line), fits);
      lines.push(head);
      line = clean(line).slice(head.length);
    }
  }
  if (clean(line).trim() !== '') lines.push(clean(line).trimEnd());
  return lines;
}

/** Pieces between which a line may end: after spaces, hyphens and slashes, and at soft hyphens. */
const parts = (text: string): readonly string[] =>
  text
    .trim()
    .match(new RegExp(`[^ \\-/${SOFT_HYPHEN}]*(?:[\\-/]+ *|${SOFT_HYPHEN}| +|$)`, 'g'))
    ?.filter((p) => p !== '') ?? [];

const clean = (line: string): string => line.replaceAll(SOFT_HYPHEN, '');

/** A line that ends at a soft hyphen shows it. */
const ended = (line: string): string => (line.endsWith(SOFT_HYPHEN) ? `${clean(line)}-` : clean(line).trimEnd());

function longest(word: string, fits: (text: string) => boolean): string {
  const chars = [...word];
  let count = chars.length - 1;
  while (count > 1 && !fits(chars.slice(0, count).join(''))) count--;
  return chars.slice(0, Math.max(1, count)).join('');
}
