import type { Words } from '../../words/words.ts';
import type { CardBox } from '../card.ts';

/** The labels printed on a box, each as printed: `UK 8`, `EU 42`. */
export const labelsOf = ({ labels }: CardBox, words: Words): readonly string[] =>
  labels.map(({ system, label }) => words.say(`card.label.${system}`, { label }));

/** The width of a box in words, where it is not the usual one. */
export const widthOf = ({ width }: CardBox, words: Words): readonly string[] =>
  width ? [words.say(`card.width.${width}`)] : [];

/** Everything printed on a box, but not where it stands: `UK 8 · EU 42 · wide`. */
export const boxText = (box: CardBox, words: Words): string =>
  [...labelsOf(box, words), ...widthOf(box, words)].join(' · ');
