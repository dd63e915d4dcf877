import { BOX_WIDTHS, type BoxWidth, type Shelf } from '../stock/shoe.ts';

/**
 * Width letters on boxes, per shelf. Medium D for men and B for women is from memory, and so are the steps around it;
 * the same letter means another width on the other shelf, so a letter is read with its shelf or not at all.
 * British letters run two higher (Rossi 2000, as cited): they are not read here.
 */
const LETTERS: Readonly<Record<'men' | 'women', Readonly<Record<BoxWidth, string>>>> = {
  men: { narrow: 'B', standard: 'D', wide: '2E', 'extra-wide': '4E' },
  women: { narrow: '2A', standard: 'B', wide: 'D', 'extra-wide': '2E' },
};

/**
 * The letter for a width on a shelf. No answer on the junior and shared shelves, where letters are not of one kind.
 *
 * @example widthLetter('wide', 'women') // 'D'
 */
export function widthLetter(width: BoxWidth, shelf: Shelf): string | undefined {
  return shelf === 'men' || shelf === 'women' ? LETTERS[shelf][width] : undefined;
}

/**
 * Reads a width as printed: a word, or a letter of the shelf (`2E` and `EE` alike).
 *
 * @example parseWidth('EE', 'men') // 'wide'
 */
export function parseWidth(text: string, shelf: Shelf): BoxWidth | undefined {
  const plain = text.trim().toLowerCase().replace(/\s+/g, '-');
  const word = BOX_WIDTHS.find((each) => each === plain);
  if (word !== undefined) return word;
  const letter = plain.toUpperCase().replace(/^(A{2,4}|E{2,4})$/, (run) => `${run.length}${run[0]}`);
  return BOX_WIDTHS.find((each) => widthLetter(each, shelf) === letter);
}
