import { asMeasured } from '../../attributes/as-measured.ts';
import { attribute } from '../../attributes/table.ts';
import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import type { CardFacts, Strip } from '../card.ts';
import type { StripsText, StripText } from './card-text.ts';

/** The tape measures, with what each says in sentences for whoever listens instead of looking. */
export function stripsText(facts: Pick<CardFacts, 'strips' | 'todayMeasured'>, words: Words): StripsText {
  const count = Math.max(0, ...facts.strips.map((strip) => strip.pairs.length + strip.missing.length));
  const pairs = count > 0;
  const today = facts.strips.some((strip) => strip.today !== undefined);
  return {
    heading: words.say(`card.strips.heading${count > 1 ? '' : pairs ? '-one' : '-none'}`),
    legend: {
      band: words.say('card.strips.band'),
      ...(pairs ? { pair: words.say('card.strips.pair') } : {}),
      ...(today ? { today: words.say(facts.todayMeasured ? 'card.strips.today' : 'card.strips.today-usual') } : {}),
    },
    rows: facts.strips.map((strip) => stripText(strip, words)),
  };
}

function stripText(strip: Strip, words: Words): StripText {
  const low = words.say(`card.strip.${strip.attribute}.low`);
  const high = words.say(`card.strip.${strip.attribute}.high`);
  return {
    strip,
    name: words.say(`card.strip.${strip.attribute}.name`),
    low,
    high,
    ...(strip.missing.length > 0
      ? { missing: words.say('card.strips.missing', { letters: listText(strip.missing, words.language, 'and') }) }
      : {}),
    ...(strip.wanted && isMeasured(strip) ? { figures: rangeText(strip.attribute, strip.wanted, words) } : {}),
    spoken: spoken(strip, low, high, words),
  };
}

/** A judged property has anchored words, not figures; they are with the needs. */
const isMeasured = (strip: Strip): boolean => attribute(strip.attribute).kind === 'number';

function rangeText(key: Strip['attribute'], wanted: readonly [number, number], words: Words): string {
  const { unit } = attribute(key);
  const [from, to] = asMeasured(key, wanted);
  const digits = unit === 'g' || unit === 'money' ? 0 : 1;
  const write = (value: number) => words.number(value, Number.isInteger(value) ? 0 : digits);
  return words.say('card.strips.figures', {
    from: write(from),
    to: write(to),
    unit: words.say(`card.unit.${unit}`),
  });
}

function spoken(strip: Strip, low: string, high: string, words: Words): string {
  const where = (letter: string, at: number): string => {
    if (at >= strip.band[0] && at <= strip.band[1]) return words.say('card.strips.spoken-in', { letter });
    return words.say('card.strips.spoken-below', { letter, end: at < strip.band[0] ? low : high });
  };
  return [
    ...strip.pairs.map((pair) => where(pair.letter, pair.at)),
    ...strip.missing.map((letter) => words.say('card.strips.spoken-missing', { letter })),
    ...(strip.today === undefined ? [] : [where(words.say('card.strips.spoken-today'), strip.today)]),
  ].join(' ');
}
