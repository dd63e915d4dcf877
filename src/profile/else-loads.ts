import { LOADS, type Load } from '../flow/knowledge.ts';
import { shareWeight } from './share-weights.ts';

/** What each plain word for "something else" loads, 0 to 1, when it is what they mostly do. Source: common practice. */
const ELSE_LOADS: ReadonlyMap<string, Readonly<Partial<Record<Load, number>>>> = new Map([
  [
    'running',
    { impact: 0.6, 'rearfoot-landing': 0.7, 'forefoot-landing': 0.3, 'forward-push': 0.7, 'time-on-feet': 0.4 },
  ],
  ['jumping', { impact: 0.8, 'forefoot-landing': 0.9, bounce: 1 }],
  ['sideways', { 'side-to-side': 1, impact: 0.4 }],
  ['turning', { twisting: 1 }],
  ['pushing-off', { 'forward-push': 1 }],
  ['deep-knee-bends', { squat: 1 }],
  ['standing-walking', { 'time-on-feet': 1, 'rearfoot-landing': 0.6, impact: 0.2 }],
  ['pedals', { pedals: 1 }],
  ['rough-ground', { roughness: 1 }],
  ['kneeling', { 'toe-drag': 1 }],
]);

/** One load of an activity described in plain words, and the word that put it there. */
export interface ElseLoad {
  readonly load: Load;
  readonly value: number;
  readonly word: string | undefined;
}

/**
 * The loads of "something else". The heaviest word speaks for each load, so that saying it in two ways does not
 * double it; nothing at all where no word was chosen.
 */
export function elseLoads(shares: Readonly<Record<string, unknown>>): readonly ElseLoad[] {
  const words = [...ELSE_LOADS].filter(([word]) => Object.hasOwn(shares, word) && shareWeight(shares[word]) > 0);
  if (words.length === 0) return [];
  return LOADS.map((load) => {
    const said = words.map(([word, loads]) => ({ load, word, value: shareWeight(shares[word]) * (loads[load] ?? 0) }));
    const heaviest = said.reduce((best, each) => (each.value > best.value ? each : best));
    return heaviest.value > 0 ? heaviest : { load, value: 0, word: undefined };
  });
}
