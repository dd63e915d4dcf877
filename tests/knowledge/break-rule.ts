import { attribute } from '../../src/attributes/table.ts';
import type { Ask, Knowledge, Rule } from '../../src/flow/knowledge.ts';

/** A body of knowledge with one rule broken, and how. */
export interface Broken {
  readonly how: string;
  readonly knowledge: Knowledge;
}

/**
 * Every way in which a rule can stop saying what its source found: gone, silenced, turned round in one property, holding
 * another figure, or held for better evidence than it is.
 */
export function breakRule(knowledge: Knowledge, rule: Rule): readonly Broken[] {
  const { asks = [], musts, cautions, advice, wishes, outcome, grade } = rule;
  const says = cautions ?? advice;
  const others: (readonly [string, Partial<Rule>])[] = [
    ...asks.map((ask, at) => [`${ask.attribute} turned round`, { asks: asks.with(at, turnedRound(ask)) }] as const),
    ...(musts
      ? [['another must', { musts: musts.map((must) => ({ ...must, value: another(must.value) })) }] as const]
      : []),
    ...(asks.length === 0 && !musts && !outcome && !wishes
      ? [['a must made of what is only said', { musts: [{ attribute: 'waterproof', value: true }] }] as const]
      : []),
    ...(grade === 'strong' ? [] : [['held for strong', { grade: 'strong' }] as const]),
  ];
  const gone = { how: 'gone', knowledge: { ...knowledge, rules: knowledge.rules.filter(({ id }) => id !== rule.id) } };
  const silent = says ? [changed('silent', ({ cautions: _, advice: __, ...rest }: Rule) => rest as Rule)] : [];
  return [gone, ...silent, ...others.map(([how, part]) => changed(how, (row) => ({ ...row, ...part })))];

  function changed(how: string, change: (rule: Rule) => Rule): Broken {
    return {
      how,
      knowledge: { ...knowledge, rules: knowledge.rules.map((row) => (row.id === rule.id ? change(row) : row)) },
    };
  }
}

/** The same distance from the other end of the scale; a shift, the other way; a range in the middle leans to one side. */
function turnedRound(ask: Ask): Ask {
  const { ideal, limits, shift } = ask;
  if (!ideal) return { ...ask, shift: shift ? -shift : 3 };
  const [low, high] = attribute(ask.attribute).range;
  const over = ([from, to]: readonly [number, number]) => [low + high - to, low + high - from] as const;
  const [from, to] = over(ideal);
  const turned = from === ideal[0] ? ([from, (from + to) / 2] as const) : over(ideal);
  return { ...ask, ideal: turned, ...(limits ? { limits: over(limits) } : {}) };
}

const another = (value: string | number | boolean) =>
  typeof value === 'number' ? value * 2 : typeof value === 'boolean' ? !value : `not-${value}`;
