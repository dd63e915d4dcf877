import { attribute } from '../../attributes/table.ts';
import type { Finding } from '../../units/result.ts';
import type { Ask } from '../knowledge.ts';
import type { Shape } from './shape.ts';

type Report = (code: string, further?: Pick<Finding, 'value' | 'data'>) => readonly Finding[];

/**
 * How many steps past what a stock list accepts a limit may lie: a limit on the last word of a scale would make that
 * word worth nothing. Our choice.
 */
const LIMIT_STEPS = 2;

/** What is wrong with one thing a rule asks of one property. */
export function checkAsk(ask: Ask, facts: ReadonlyMap<string, Shape>, report: Report): readonly Finding[] {
  const { accepted, step } = attribute(ask.attribute);
  const beyond = [accepted[0] - LIMIT_STEPS * step, accepted[1] + LIMIT_STEPS * step] as const;
  const { ideal, limits, shift, per } = ask;
  return [
    ...((ideal === undefined) === (shift === undefined) ? report('ask-not-one-thing') : []),
    ...(ideal ? rangeFindings('ideal', ideal, accepted, report) : []),
    ...(limits ? rangeFindings('limits', limits, beyond, report) : []),
    ...(ideal && limits && !isWithin(ideal, limits)
      ? report('ideal-outside-limits', { value: written(ideal), data: { expected: written(limits) } })
      : []),
    ...(per === undefined ? [] : perFindings(per, facts.get(per), report)),
  ];
}

type Range = readonly [number, number];
const isWithin = ([low, high]: Range, [from, to]: Range): boolean => low >= from && high <= to;
const written = ([low, high]: Range): string => `${low}–${high}`;

function rangeFindings(name: string, range: Range, accepted: Range, report: Report): readonly Finding[] {
  if (range[0] > range[1]) return report('range-backwards', { value: written(range), data: { name } });
  if (isWithin(range, accepted)) return [];
  return report('outside-attribute', { value: written(range), data: { name, expected: written(accepted) } });
}

/** `per` scales a weight, so it has to be a fact from 0 to 1. */
export function perFindings(per: string, shape: Shape | undefined, report: Report): readonly Finding[] {
  if (!shape) return report('unknown-fact', { value: per });
  const [from, to] = shape.range ?? [];
  return from === 0 && to === 1 ? [] : report('per-not-a-share', { value: per });
}
