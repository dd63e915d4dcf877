import type { FormulaLabels } from '../../sizing/advice.ts';
import type { Words } from '../../words/words.ts';

/** The sizes that we worked out, written as the language writes numbers: `EU 39,5` in German. A box's own stay as printed. */
export const labelLine = (labels: FormulaLabels, words: Words): string =>
  words.say('card.size.label-line', {
    ...Object.fromEntries(Object.entries(labels).map(([system, label]) => [system, sizeNumber(String(label), words)])),
  });

/** A size that no box need bear: its number as the language writes it. */
export const sizeNumber = (label: string, words: Words): string =>
  label.replace(/\d+\.\d+/, (figure) => words.number(Number(figure), 1));
