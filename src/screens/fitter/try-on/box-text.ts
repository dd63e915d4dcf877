import type { Box } from '../../../stock/shoe.ts';
import type { Words } from '../../../words/words.ts';
import { labelsOf } from '../bench-pairs.ts';

/** The width of a box in words, where it is not the usual one. */
export const widthText = ({ width }: Box, words: Words): readonly string[] =>
  width && width !== 'standard' ? [words.say(`card.width.${width}`)] : [];

/** A box as the fitter looks for it: what is printed on it, its width where it is not the usual one, and its shelf. */
export const boxText = (box: Box, words: Words): string =>
  [
    ...labelsOf(box, words).slice(0, 2),
    ...widthText(box, words),
    words.say('card.fetch.shelf', { place: box.place }),
  ].join(' · ');
