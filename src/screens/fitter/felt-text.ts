import type { Box } from '../../stock/shoe.ts';
import type { TryOn } from '../../visit/visit.ts';
import type { Words } from '../../words/words.ts';

/** How a box was on the feet, for whoever decides: the size felt, its place in the customer's order, and comfort. */
export function feltText(box: Pick<Box, 'id' | 'shoe'>, tryOns: readonly TryOn[], words: Words): string {
  const record = tryOns.findLast((each) => each.shoe === box.shoe && each.box === box.id);
  if (!record) return '';
  const { size, rank, comfort } = record;
  return [
    words.say('try-on.tried'),
    ...(size ? [`${words.say('try-on.size.name')}: ${words.say(`try-on.size.${size}`)}`] : []),
    ...(rank === undefined ? [] : [words.say('bench.decide.rank', { place: rank })]),
    ...(comfort === undefined ? [] : [words.say('bench.decide.comfort', { comfort })]),
  ].join(' · ');
}
