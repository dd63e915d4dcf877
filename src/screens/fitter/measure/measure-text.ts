import type { Finding } from '../../../units/result.ts';
import type { Measure, MeasureUnit } from '../../../units/typed-measure.ts';
import type { Words } from '../../../words/words.ts';

/** A number as it is typed: the language's decimal sign, no grouping. */
export function plainNumber(value: number, words: Words): string {
  const sign = words.number(0.5, 1).replace(/\d/g, '');
  return String(Math.round(value * 100) / 100).replace('.', sign);
}

export const unitText = (unit: string, words: Words): string => words.say(`measure.unit.${unit}`);

/**
 * What was understood: `26.5 cm → 265 mm`, or `265 mm` alone where it was typed so.
 */
export function echoText({ value, typed }: Measure, base: MeasureUnit, words: Words): string {
  const say = (number: number, unit: MeasureUnit): string => `${plainNumber(number, words)} ${unitText(unit, words)}`;
  const read = say(Math.round(value * 10) / 10, base);
  return typed.unit === base ? read : `${say(typed.value, typed.unit)} → ${read}`;
}

/**
 * A finding in words, said to the fitter where it has words of their own: what is "yours" to the customer is not
 * theirs. Units in its data are said, not shown as codes.
 */
export function findingText({ code, data = {}, value }: Finding, words: Words): string {
  const said = Object.fromEntries(
    Object.entries(data).map(([key, each]) =>
      key.toLowerCase().endsWith('unit') && typeof each === 'string' ? [key, unitText(each, words)] : [key, each],
    ),
  );
  const own = `finding.${code}-fitter`;
  return words.say(words.has(own) ? own : `finding.${code}`, { ...(value === undefined ? {} : { value }), ...said });
}
