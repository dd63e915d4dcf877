import { CAUTION_LEVELS } from '../../flow/knowledge.ts';
import type { Words } from '../../words/words.ts';
import type { CardCaution } from '../card.ts';
import type { CautionsText, ListText } from './card-text.ts';

/** Cautions under the heading of their urgency, most urgent first. Shoe care stands apart, see `careText`. */
export function cautionsText(
  cautions: readonly CardCaution[],
  emergencyNumber: string,
  words: Words,
): readonly CautionsText[] {
  return CAUTION_LEVELS.filter((level) => level !== 'upkeep').flatMap((level) => {
    const items = cautions.filter((caution) => caution.level === level);
    if (items.length === 0) return [];
    return [
      {
        level,
        heading: words.say(`card.cautions.${level}`, { number: emergencyNumber }),
        items: items.map((item) => cautionItem(item, words)),
      },
    ];
  });
}

function cautionItem(caution: CardCaution, words: Words): { text: string; backing?: string } {
  const text = words.say(`caution.${caution.code}.text`);
  if (!caution.backing) return { text };
  const { source, grade } = caution.backing;
  return {
    text,
    backing: words.say('card.bench.backing', {
      grade: words.say(`card.grade.${grade}`),
      source: sourceName(source, words),
    }),
  };
}

export const sourceName = (source: string, words: Words): string =>
  source === 'common-practice' ? words.say('card.bench.common-practice') : `[${source}]`;

export function careText(cautions: readonly CardCaution[], words: Words): ListText {
  return {
    heading: words.say('card.care.heading'),
    items: cautions.filter((c) => c.level === 'upkeep').map((c) => words.say(`caution.${c.code}.text`)),
  };
}
