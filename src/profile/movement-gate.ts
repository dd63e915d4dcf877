import type { Facts } from './profile.ts';

/** Try-on tasks that are open to everybody who may try shoes at all. Any other, and any new one, is gated. */
const GENTLE_TASKS: readonly string[] = ['stand-still', 'stand-firm', 'walk', 'pedal-press'];

/** The only ones for two different shoes, left and right. */
const UNEVEN_TASKS: readonly string[] = ['stand-still', 'walk'];

/** List answers that hold moving tasks back. Source: common practice, on the careful side. */
const HOLDING: Readonly<Record<string, readonly string[]>> = {
  ankles: ['over-six-weeks', 'gives-way'],
  conditions: ['pregnant', 'pregnant-swelling-headache', 'falls-or-unsteady'],
  inside: ['prosthesis'],
};

/** Where it hurts now or this month; older marks do not hold a task back. */
const TENDER: readonly string[] = [
  'calf',
  'achilles',
  'heel',
  'shin',
  'ball',
  'outer-foot',
  'ankle-inner',
  'ankle-outer',
];
const STILL: readonly unknown[] = ['now', 'this-month'];

/** Answers on the signs list that are no sign. */
const NO_SIGN: readonly string[] = ['none', 'rather-not-say', 'no-grown-up'];

/**
 * The answers that hold moving tasks back, as a reason's `from`; empty where nothing does.
 *
 * A recent sprain, pregnancy, falls, pain at calf, heel or bone, any stop sign, and health not asked about: a visit
 * whose health answers did not travel counts as not asked about, since nobody here can tell.
 */
export function heldBecause(facts: Facts): readonly string[] {
  const listed = Object.entries(HOLDING).flatMap(([question, words]) =>
    listOf(facts, question)
      .filter((word) => words.includes(word))
      .map((word) => `${question}:${word}`),
  );
  const tender = TENDER.filter((region) => STILL.includes(facts[`body-${region}`])).map((region) => `body:${region}`);
  const signs = listOf(facts, 'signs')
    .filter((sign) => !NO_SIGN.includes(sign))
    .map((sign) => `signs:${sign}`);
  return [...signs, ...listed, ...tender, ...(facts['health-asked'] === 'asked' ? [] : ['signs'])];
}

/**
 * Whether a try-on task may be done: a gentle one always, a moving one only where nothing holds it back.
 *
 * @example
 * taskGate('walk', { 'health-asked': 'skipped' }) // 'open'
 * taskGate('small-jumps', { 'health-asked': 'skipped' }) // 'held'
 * taskGate('small-jumps', { 'health-asked': 'asked' }) // 'open'
 */
export const taskGate = (task: string, facts: Facts): 'open' | 'held' =>
  GENTLE_TASKS.includes(task) || heldBecause(facts).length === 0 ? 'open' : 'held';

/**
 * The same with different shoes left and right: standing and a slow walk, whoever it is.
 *
 * @example
 * unevenTaskGate('stairs') // 'held'
 */
export const unevenTaskGate = (task: string): 'open' | 'held' => (UNEVEN_TASKS.includes(task) ? 'open' : 'held');

function listOf(facts: Facts, key: string): readonly string[] {
  const value = facts[key];
  return Array.isArray(value) ? value : [];
}
