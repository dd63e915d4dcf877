import { type AnswerKind, answerKinds } from './answer-kinds.ts';
import type { Condition } from './condition.ts';
import type { Flow, Option, Question } from './format.ts';
import { type LiveConditions, liveConditions } from './live-conditions.ts';
import { allOptions, type Tables } from './options.ts';
import { questionsOf } from './route.ts';

/** Everything that can be counted of a flow, exactly, by walking all its routes at once. */
export interface Walk {
  /** Distinct ordered sets of questions shown. */
  readonly routes: bigint;
  /** Distinct ways to answer the whole interview; `answerKinds` says what one answer is. May exceed what JSON numbers hold. */
  readonly answerPaths: bigint;
  /** Questions on the shortest and the longest route. */
  readonly shortest: number;
  readonly longest: number;
  /** How often each question, and each of its options where it is asked, is met. */
  readonly met: ReadonlyMap<string, Met>;
}
export interface Met {
  readonly asked: HowOften;
  readonly offered: ReadonlyMap<string, HowOften>;
  /** Some route leads to it and then offers nothing to answer it with. */
  readonly stuck: boolean;
}
export type HowOften = 'never' | 'sometimes' | 'always';

/** Visitors whom nothing further on can tell apart. */
interface Crowd {
  readonly ways: bigint;
  readonly shortest: number;
  readonly longest: number;
}
type Crowds = ReadonlyMap<bigint, Crowd>;

/**
 * Walks a flow from its first question to its last, carrying along only what later conditions read of the answers.
 *
 * With `when`, only visitors of whom it holds at the end are counted.
 */
export function walk(flow: Flow, tables: Tables, when?: Condition): Walk {
  const questions = questionsOf(flow);
  const live = liveConditions(questions, tables, when ? [when] : []);
  const met = new Map<string, Met>();
  let crowds: Crowds = new Map([[0n, { ways: 1n, shortest: 0, longest: 0 }]]);
  let prefixes: Prefixes = new Map([['0', { ends: [0n], count: 1n }]]);
  questions.forEach((question, index) => {
    const next = stepsFrom(question, live, live.after(index), tables);
    const steps = new Map([...crowds.keys()].map((bits) => [bits, next(bits)]));
    met.set(question.id, howOftenMet(question, tables, [...steps.values()]));
    crowds = advance(crowds, steps);
    prefixes = advanceRoutes(prefixes, steps);
  });
  const counts = (bits: bigint) => when === undefined || live.holds(when, bits);
  const ends = [...crowds].filter(([bits]) => counts(bits)).map(([, crowd]) => crowd);
  return {
    routes: sum([...prefixes.values()].filter(({ ends }) => ends.some(counts)).map(({ count }) => count)),
    answerPaths: sum(ends.map(({ ways }) => ways)),
    shortest: ends.reduce((least, { shortest }) => Math.min(least, shortest), Number.POSITIVE_INFINITY),
    longest: ends.reduce((most, { longest }) => Math.max(most, longest), 0),
    met,
  };
}

const sum = (counts: readonly bigint[]): bigint => counts.reduce((total, count) => total + count, 0n);

/** What one question does to one crowd: passes it by, or splits it by answer. */
interface Step {
  readonly asked: boolean;
  readonly offered: readonly Option[];
  readonly to: ReadonlyMap<bigint, bigint>;
}

function stepsFrom(question: Question, live: LiveConditions, kept: bigint, tables: Tables): (bits: bigint) => Step {
  const options = allOptions(question, tables);
  const known = new Map<string, readonly AnswerKind[]>();
  const kindsFor = (offered: readonly Option[]) => {
    const key = offered.map(({ id }) => id).join();
    const kinds = known.get(key) ?? answerKinds(question, offered, live.on(question.id));
    known.set(key, kinds);
    return kinds;
  };
  return (bits) => {
    if (question.askWhen && !live.holds(question.askWhen, bits)) {
      return { asked: false, offered: [], to: new Map([[bits & kept, 1n]]) };
    }
    const offered = options.filter(({ showWhen }) => !showWhen || live.holds(showWhen, bits));
    const to = new Map<bigint, bigint>();
    for (const { example, count } of kindsFor(offered)) {
      const end = (bits | live.bitsOf(question.id, example)) & kept;
      to.set(end, (to.get(end) ?? 0n) + count);
    }
    return { asked: true, offered, to };
  };
}

function advance(crowds: Crowds, steps: ReadonlyMap<bigint, Step>): Crowds {
  const after = new Map<bigint, Crowd>();
  for (const [bits, { ways, shortest, longest }] of crowds) {
    const step = steps.get(bits);
    const shown = step?.asked ? 1 : 0;
    for (const [end, count] of step?.to ?? []) {
      const there = after.get(end);
      after.set(end, {
        ways: (there?.ways ?? 0n) + ways * count,
        shortest: Math.min(there?.shortest ?? Number.POSITIVE_INFINITY, shortest + shown),
        longest: Math.max(there?.longest ?? 0, longest + shown),
      });
    }
  }
  return after;
}

/**
 * How many distinct beginnings of a route lead to each set of crowds. Two answers that show the same questions make one
 * route, so beginnings are told apart by what was shown, and each carries every crowd that was shown it.
 */
type Prefixes = ReadonlyMap<string, { readonly ends: readonly bigint[]; readonly count: bigint }>;

function advanceRoutes(prefixes: Prefixes, steps: ReadonlyMap<bigint, Step>): Prefixes {
  const after = new Map<string, { readonly ends: readonly bigint[]; readonly count: bigint }>();
  for (const { ends, count } of prefixes.values()) {
    for (const asked of [true, false]) {
      const next = new Set(
        ends.flatMap((bits) => {
          const step = steps.get(bits);
          return step?.asked === asked ? [...step.to.keys()] : [];
        }),
      );
      if (next.size === 0) continue;
      const sorted = [...next].sort((a, b) => (a < b ? -1 : 1));
      const key = sorted.join();
      after.set(key, { ends: sorted, count: (after.get(key)?.count ?? 0n) + count });
    }
  }
  return after;
}

function howOftenMet(question: Question, tables: Tables, steps: readonly Step[]): Met {
  const asked = steps.filter((step) => step.asked);
  const howOften = (times: number, outOf: number): HowOften =>
    times === 0 ? 'never' : times < outOf ? 'sometimes' : 'always';
  const offered = allOptions(question, tables).map(
    ({ id }) =>
      [id, howOften(asked.filter((step) => step.offered.some((o) => o.id === id)).length, asked.length)] as const,
  );
  return {
    asked: howOften(asked.length, steps.length),
    offered: new Map(offered),
    stuck: asked.some(({ to }) => to.size === 0),
  };
}
