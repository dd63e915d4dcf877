import type { Words } from '../../words/words.ts';
import type { CardEaseIn, CardLineUp } from '../card.ts';
import type { EaseInText } from './card-text.ts';

/** Week by week, a row for each pair that asks for it: how much of the usual to do in the new pair. */
export function easeInText(lineUps: readonly CardLineUp[], words: Words): EaseInText {
  const seen = new Set<string>();
  const pairs = lineUps
    .flatMap((lineUp) => lineUp.pairs)
    .filter((pair) => pair.easeIn && !seen.has(pair.letter) && seen.add(pair.letter));
  const plans = pairs.flatMap(({ letter, easeIn }) => (easeIn ? [{ letter, ...easeIn }] : []));
  const columns = merged(plans);
  const last = columns.at(-1);
  return {
    heading: words.say('card.ease-in.heading'),
    why: plans.map((plan) => `${plan.letter}: ${plan.triggers.map((t) => words.say(`easeIn.${t}`)).join(' ')}`),
    caption: plans[0] ? words.say('card.ease-in.caption', { unit: words.say(`card.unit.${plans[0].unit}`) }) : '',
    weeks: [
      words.say('card.ease-in.week'),
      ...columns.map((column) => weekText(column.from, column.to, column === last, words)),
    ],
    rows: plans.map((plan, at) => [plan.letter, ...columns.map((column) => shareText(column.shares[at] ?? 1, words))]),
    rest: words.say('card.ease-in.rest'),
  };
}

interface Column {
  readonly from: number;
  to: number;
  /** One for each plan. */
  readonly shares: readonly number[];
}

/** Weeks in which no plan changes, as one column. A plan that is over stays where it ended. */
function merged(plans: readonly CardEaseIn[]): readonly Column[] {
  const weeks = [...new Set(plans.flatMap((plan) => plan.weeks.map(({ week }) => week)))].sort((a, b) => a - b);
  const columns: Column[] = [];
  for (const week of weeks) {
    const shares = plans.map(
      (plan) => plan.weeks.find((row) => row.week === week)?.share ?? plan.weeks.at(-1)?.share ?? 1,
    );
    const last = columns.at(-1);
    if (last && last.shares.join() === shares.join()) last.to = week;
    else columns.push({ from: week, to: week, shares });
  }
  return columns;
}

function weekText(from: number, to: number, last: boolean, words: Words): string {
  if (last) return words.say('card.ease-in.last', { week: from });
  return from === to ? words.number(from) : words.say('card.ease-in.weeks', { from, to });
}

function shareText(share: number, words: Words): string {
  const { some, of } = simpleShare(share);
  return some === of ? words.say('card.ease-in.all') : words.say('card.ease-in.part', { some, of });
}

/**
 * The nearest share with a small denominator, never more than was asked for by over a twentieth.
 *
 * @example
 * simpleShare(0.25) // { some: 1, of: 4 }
 * simpleShare(0.3) // { some: 3, of: 10 }
 * simpleShare(1) // { some: 1, of: 1 }
 */
export function simpleShare(share: number): { readonly some: number; readonly of: number } {
  let best = { some: 1, of: 1 };
  for (const of of [1, 2, 3, 4, 5, 10]) {
    const some = Math.max(1, Math.round(share * of));
    if (some > of || some / of > share + 0.05) continue;
    if (Math.abs(some / of - share) + 1e-9 < Math.abs(best.some / best.of - share)) best = { some, of };
  }
  return best;
}
