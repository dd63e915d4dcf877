import fc from 'fast-check';
import { type Answer, type Answers, BODY_WHEN, SHARES } from '../../src/flow/answers.ts';
import type { Question } from '../../src/flow/format.ts';
import type { Knowledge } from '../../src/flow/knowledge.ts';
import { allOptions, tablesOf } from '../../src/flow/options.ts';
import { questionsOf } from '../../src/flow/route.ts';
import { HOLDS, type Visit } from '../../src/visit/visit.ts';
import { visitOf } from './toy-visit.ts';

/** Any answer that fits a question's kind. */
export function anyAnswer(question: Question, knowledge: Knowledge): fc.Arbitrary<Answer> {
  const ids = allOptions(question, tablesOf(knowledge)).map((option) => option.id);
  switch (question.kind) {
    case 'one-of':
      return fc.constantFrom(...ids);
    case 'yes-no':
      return fc.constantFrom('yes', 'no', 'not-sure');
    case 'some-of':
    case 'signs':
      return fc.uniqueArray(fc.constantFrom(...ids), { minLength: 1, maxLength: 3 });
    case 'number':
      return fc.oneof(
        fc.constant('not-sure'),
        fc
          .constantFrom(...question.units)
          .chain(({ id, from, to }) =>
            fc.integer({ min: Math.ceil(from), max: Math.floor(to) }).map((value) => ({ value, unit: id })),
          ),
      );
    case 'shares':
      return fc.dictionary(fc.constantFrom(...ids), fc.constantFrom(...SHARES), { minKeys: 1, maxKeys: 3 });
    case 'against-today':
      return fc
        .tuple(
          ...question.properties.map(({ id, choices }) =>
            fc.option(fc.constantFrom(...choices)).map((choice) => [id, choice] as const),
          ),
        )
        .map((chosen) => Object.fromEntries(chosen.flatMap(([id, choice]) => (choice === null ? [] : [[id, choice]]))));
    case 'body-map':
      return fc.oneof(
        { weight: 1, arbitrary: fc.constantFrom('skipped', 'rather-not-say') },
        {
          weight: 4,
          arbitrary: fc.dictionary(
            fc.constantFrom(...question.regions.map(({ id }) => id)),
            fc.record({ when: fc.constantFrom(...BODY_WHEN), seen: fc.boolean() }),
            { maxKeys: 4 },
          ),
        },
      );
  }
}

/** Any answers to any of a flow's questions, on the route or off it. */
export function anyAnswers(knowledge: Knowledge): fc.Arbitrary<Answers> {
  const questions = questionsOf(knowledge.flow);
  return fc
    .tuple(...questions.map((question) => fc.option(anyAnswer(question, knowledge), { freq: 4 })))
    .map((answers) =>
      Object.fromEntries(
        questions.flatMap(({ id }, i) => (answers[i] === null || answers[i] === undefined ? [] : [[id, answers[i]]])),
      ),
    );
}

/** Any change a fitter might make. */
export function anyOverride(knowledge: Knowledge) {
  return fc.constantFrom(...questionsOf(knowledge.flow)).chain((question) =>
    anyAnswer(question, knowledge).map((value) => ({
      question: question.id,
      value,
      by: 'Fitter',
      reason: 'asked again',
    })),
  );
}

const anyRollSeen = fc.constantFrom('not-told', 'in', 'even', 'out') as fc.Arbitrary<
  'not-told' | 'in' | 'even' | 'out'
>;
export const anyRoll = fc.record({
  left: anyRollSeen,
  right: anyRollSeen,
  by: fc.constant('Fitter'),
  during: fc.constant('walk' as const),
});

/** Any visit: answers, changes, clearance, what was carried, what was seen. */
export function anyVisit(knowledge: Knowledge): fc.Arbitrary<Visit> {
  return fc
    .record({
      answers: anyAnswers(knowledge),
      overrides: fc.array(anyOverride(knowledge), { maxLength: 2 }),
      cleared: fc.boolean(),
      hold: fc.option(fc.constantFrom(...HOLDS), { freq: 2 }),
      roll: fc.option(anyRoll),
      // Millimetres, invented.
      left: fc.option(fc.integer({ min: 150, max: 310 })),
      drop: fc.option(fc.integer({ min: 0, max: 14 })),
    })
    .map(({ answers, overrides, cleared, hold, roll, left, drop }) =>
      visitOf(answers, {
        overrides,
        ...(cleared ? { clearance: { by: 'Fitter', reason: 'letter from a clinic' } } : {}),
        ...(hold === null ? {} : { hold }),
        observation: {
          ...(roll === null ? {} : { roll }),
          ...(left === null
            ? {}
            : { feet: { left: { length: left }, posture: 'standing', sock: 'worn-sock' } as const }),
          ...(drop === null ? {} : { oldPair: { measured: { drop } } }),
        },
      }),
    );
}
