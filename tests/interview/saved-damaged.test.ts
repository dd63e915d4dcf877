import fc from 'fast-check';
import { expect, test } from 'vitest';
import { firstUnanswered, inPlay, questionsOf } from '../../src/flow/route.ts';
import { isAnswer } from '../../src/flow/valid-answer.ts';
import { restoredInterview, savedInterview } from '../../src/interview/saved.ts';
import { anyAnswers } from '../visit/any-visit.ts';
import { fittingFlow as flow, fittingTables as tables } from '../visit/fitting.ts';

const questions = new Map(questionsOf(flow).map((question) => [question.id, question]));

/** What an interview may begin from: only answers that fit, at a place on their route. */
function sound(record: unknown): void {
  const { value } = restoredInterview(flow, tables, record);
  if (!value) return;
  for (const [id, answer] of Object.entries(value.answers)) {
    const question = questions.get(id);
    expect(question !== undefined && isAnswer(question, answer, tables), id).toBe(true);
  }
  expect(['welcome', 'review', ...inPlay(flow, value.answers)]).toContain(value.at);
  if (value.at === 'review') expect(firstUnanswered(flow, value.answers)).toBeUndefined();
}

// Names that every object has, and that a record may have lost or set to something else.
const key = fc.oneof(
  fc.constantFrom('toString', 'valueOf', '__proto__', 'constructor', 'toJSON', 'length', ...questions.keys()),
  fc.string({ maxLength: 6 }),
);
const { any } = fc.letrec<{ any: unknown }>((tie) => ({
  any: fc.oneof(
    { maxDepth: 3 },
    fc.constantFrom(null, true, '', 'none', 0, -1, 1e308),
    fc.string({ unit: 'binary', maxLength: 6 }),
    fc.array(tie('any'), { maxLength: 3 }),
    fc.dictionary(key, tie('any'), { maxKeys: 4 }),
  ),
}));
const draft = fc
  .record({
    answers: anyAnswers(flow, tables),
    at: fc.constantFrom('welcome', 'review', 'finished', ...questions.keys()),
    changing: fc.boolean(),
  })
  .map((state) => savedInterview(flow, state));

/** The same record with something else in one place of it, or nothing there. */
function damaged(record: unknown, path: readonly number[], by: unknown): unknown {
  const [turn, ...rest] = path;
  if (turn === undefined || record !== Object(record)) return by;
  const keys = Object.keys(record as object);
  const at = keys[turn % Math.max(1, keys.length)];
  if (at === undefined) return by;
  const inside = damaged((record as Record<string, unknown>)[at], rest, by);
  if (Array.isArray(record)) return record.with(Number(at), inside);
  return inside === undefined
    ? Object.fromEntries(Object.entries(record as object).filter(([name]) => name !== at))
    : { ...(record as object), [at]: inside };
}

test('a draft of any shape never stops a kiosk', () => {
  fc.assert(fc.property(any, sound), { numRuns: 1000 });
  const head = { flow: fc.constant(flow.id), format: fc.constant(1) };
  fc.assert(fc.property(fc.record({ ...head, answers: any, place: any, changing: any }), sound), { numRuns: 1000 });
  fc.assert(fc.property(fc.record({ flow: any, format: any, answers: fc.constant({}) }), sound), { numRuns: 500 });
});

test('a draft damaged anywhere keeps only answers that fit, at a place of its route', () => {
  const wounds = fc.array(fc.tuple(fc.array(fc.nat(60), { maxLength: 5 }), fc.option(any, { nil: undefined })), {
    maxLength: 3,
  });
  fc.assert(
    fc.property(draft, wounds, (whole, all) => {
      sound(all.reduce<unknown>((record, [path, by]) => damaged(record, path, by), whole));
    }),
    { numRuns: 1000 },
  );
});
