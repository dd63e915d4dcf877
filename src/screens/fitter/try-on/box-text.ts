import { type Box, LABEL_SYSTEMS } from '../../../stock/shoe.ts';
import type { Words } from '../../../words/words.ts';

/** A box as the fitter looks for it: what is printed on it, its width where it is not the usual one, and its shelf. */
export function boxText(box: Box, words: Words): string {
  const labels = LABEL_SYSTEMS.flatMap((system) => {
    const label = box.labels[system];
    return label === undefined ? [] : [words.say(`card.label.${system}`, { label })];
  });
  const width = box.width && box.width !== 'standard' ? [words.say(`card.width.${box.width}`)] : [];
  return [...labels.slice(0, 2), ...width, words.say('card.fetch.shelf', { place: box.place })].join(' · ');
}
