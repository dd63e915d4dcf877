import { boxOf } from '../../card/pairs.ts';
import { labelsOf, widthOf } from '../../card/text/box-text.ts';
import type { Box, LabelSystem } from '../../stock/shoe.ts';
import type { Words } from '../../words/words.ts';

/** What tells a box from its neighbours at a glance: two of its labels, and its width where it is not the usual one. */
const LABELS_AT_A_GLANCE = 2;

/** All that is printed on a box, the customer's own size system first: `UK 8`, `EU 42`, `wide`. */
export function printedOn(box: Box, first: LabelSystem, words: Words): readonly string[] {
  const printed = boxOf(box, first);
  return [...labelsOf(printed, words), ...widthOf(printed, words)];
}

/** A box as the fitter looks for it: what is printed on it, in short, and its shelf. */
export function boxSaid(box: Box, first: LabelSystem, words: Words): string {
  const printed = boxOf(box, first);
  return [
    ...labelsOf(printed, words).slice(0, LABELS_AT_A_GLANCE),
    ...widthOf(printed, words),
    words.say('card.fetch.shelf', { place: box.place }),
  ].join(' · ');
}
