import { CAUTION_LEVELS } from '../../flow/knowledge.ts';
import type { Words } from '../../words/words.ts';
import type { CardCaution } from '../card.ts';
import type { CautionsText, ListText } from './card-text.ts';

/** How a source is named where something rests on it: `[7]`. */
export type Cite = (source: string) => string;

/** Cautions under the heading of their urgency, most urgent first. Shoe care stands apart, see `careText`. */
export function cautionsText(
  cautions: readonly CardCaution[],
  emergencyNumber: string,
  cite: Cite,
  words: Words,
): readonly CautionsText[] {
  return CAUTION_LEVELS.filter((level) => level !== 'upkeep').flatMap((level) => {
    const items = cautions.filter((caution) => caution.level === level);
    if (items.length === 0) return [];
    return [
      {
        level,
        heading: words.say(`card.cautions.${level}`, { number: emergencyNumber }),
        items: items.map((item) => cautionItem(item, cite, words)),
      },
    ];
  });
}

function cautionItem(caution: CardCaution, cite: Cite, words: Words): { text: string; backing?: string } {
  const text = words.say(`caution.${caution.code}.text`);
  if (!caution.backing) return { text };
  const { source, grade } = caution.backing;
  return {
    text,
    backing: backingText(grade, source, cite, words),
  };
}

/** How well something is backed, and by which source; what is common practice has no source to name. */
export function backingText(grade: string, source: string, cite: Cite, words: Words): string {
  const graded = words.say(`card.grade.${grade}`);
  if (source !== 'common-practice') return words.say('card.bench.backing', { grade: graded, source: cite(source) });
  const common = words.say('card.bench.common-practice');
  return grade === 'common-practice' ? common : words.say('card.bench.backing', { grade: graded, source: common });
}

/** Shoe care. On a fitter's copy with what stands behind it, unless that is common practice. */
export function careText(cautions: readonly CardCaution[], cite: Cite, words: Words): ListText {
  const items = cautions
    .filter(({ level }) => level === 'upkeep')
    .map((caution) => {
      const { text, backing } = cautionItem(caution, cite, words);
      return backing && caution.backing?.source !== 'common-practice' ? `${text} (${backing})` : text;
    });
  return { heading: words.say('card.care.heading'), items };
}
