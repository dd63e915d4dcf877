import type { Words } from '../../words/words.ts';
import type { CardEaseIn, CardLineUp } from '../card.ts';
import type { EaseInText } from './card-text.ts';

/** Week by week, a column for each pair that asks for it: how much of the usual to do in the new pair. */
export function easeInText(lineUps: readonly CardLineUp[], words: Words): EaseInText {
  const seen = new Set<string>();
  const pairs = lineUps
    .flatMap((lineUp) => lineUp.pairs)
    .filter((pair) => pair.easeIn && !seen.has(pair.letter) && seen.add(pair.letter));
  const heading = words.say('card.ease-in.heading');
  if (pairs.length === 0) return { heading, why: [], columns: [], rows: [] };
  const plans = pairs.map((pair) => pair.easeIn).filter((plan): plan is CardEaseIn => plan !== null);
  const weeks = [...new Set(plans.flatMap((plan) => plan.weeks.map((week) => week.week)))].sort((a, b) => a - b);
  return {
    heading,
    why: [
      ...pairs.map((pair) => `${pair.letter}: ${pair.easeIn?.triggers.map((t) => words.say(`easeIn.${t}`)).join(' ')}`),
      words.say('card.ease-in.rest'),
    ],
    columns: [words.say('card.ease-in.week'), ...pairs.map((pair) => pair.letter)],
    rows: merged(weeks.map((week) => ({ week, cells: plans.map((plan) => shareText(plan, week, words)) }))).map(
      ({ from, to, cells }) => [weekText(from, to, to === weeks.at(-1), words), ...cells],
    ),
  };
}

/** Weeks that say the same, as one row. */
function merged(rows: readonly { readonly week: number; readonly cells: readonly string[] }[]) {
  const out: { from: number; to: number; cells: readonly string[] }[] = [];
  for (const { week, cells } of rows) {
    const last = out.at(-1);
    if (last && last.cells.join('|') === cells.join('|')) last.to = week;
    else out.push({ from: week, to: week, cells });
  }
  return out;
}

function weekText(from: number, to: number, last: boolean, words: Words): string {
  if (last) return words.say('card.ease-in.last', { week: from });
  return from === to ? words.number(from) : words.say('card.ease-in.weeks', { from, to });
}

function shareText(plan: CardEaseIn, week: number, words: Words): string {
  const unit = words.say(`card.unit.${plan.unit}`);
  const share = plan.weeks.find((row) => row.week === week)?.share ?? 1;
  const { some, of } = simpleShare(share);
  return some === of ? words.say('card.ease-in.all', { unit }) : words.say('card.ease-in.part', { some, of, unit });
}

/**
 * The nearest share with a small denominator, never more than was asked for by over a twentieth.
 *
 * @example
 * simpleShare(0.25) // { some: 1, of: 4 }
 * simpleShare(0.3) // { some: 1, of: 3 }: nearer than 1 in 4
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
