import { moneyText } from '../units/money-text.ts';
import { anchorOf } from './anchor.ts';
import type { AttributeKey } from './attributes.ts';
import type { Speaker } from './speaker.ts';
import { attribute } from './table.ts';

/**
 * A property's value in words: with its unit, or as its anchored word. Money is written in `currency` (ISO 4217).
 *
 * @example
 * sayValue(words, 'mass', 270, 'EUR') // '270 g'
 * sayValue(words, 'cushion', 4, 'EUR') // 'soft'
 * sayValue(words, 'price', 120, 'EUR') // '€120'
 */
export function sayValue(words: Speaker, key: AttributeKey, value: number, currency: string): string {
  const { unit } = attribute(key);
  const anchor = anchorOf(key, value);
  if (anchor !== undefined) return words.say(`attribute.${key}.step.${anchor}`);
  if (unit === 'g' || unit === 'mm') return words.say(`attribute.unit.${unit}`, { value });
  return moneyText(value, currency, words.language);
}
