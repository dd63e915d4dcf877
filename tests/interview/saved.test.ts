import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Flow, Question } from '../../src/flow/format.ts';
import { restoredInterview, savedInterview } from '../../src/interview/saved.ts';
import { PICNIC, TOY_TABLES } from '../flow/toy-flows.ts';

const STATE = {
  answers: { weather: 'rain', basket: ['cake'], umbrella: 'no', shared: ['ann'] },
  at: 'review',
  changing: false,
};
const saved = savedInterview(PICNIC, STATE);
const restore = (flow: Flow, record: unknown = saved) => restoredInterview(flow, TOY_TABLES, record);
const codes = (flow: Flow, record?: unknown) => restore(flow, record).findings.map(({ code, value }) => [code, value]);

/** The same flow, a version later, with its questions changed. */
const changed = (change: (questions: readonly Question[]) => readonly Question[]): Flow => ({
  ...PICNIC,
  version: 2,
  sections: PICNIC.sections.map((section) => ({ ...section, questions: change(section.questions) })),
});

describe('a saved interview', () => {
  test('holds answers and place by question, and no machine snapshot', () => {
    expect(saved).toEqual({
      flow: 'picnic',
      flowVersion: 1,
      format: 1,
      answers: STATE.answers,
      place: 'review',
      changing: false,
    });
  });

  test('comes back as it was', () => {
    expect(restore(PICNIC)).toEqual({ value: STATE, findings: [] });
    const midway = { ...STATE, at: 'basket', changing: true };
    expect(restore(PICNIC, savedInterview(PICNIC, midway))).toEqual({ value: midway, findings: [] });
  });

  test('keeps what still fits when a question is gone, and says what it dropped', () => {
    const flow = changed((questions) => questions.filter(({ id }) => id !== 'umbrella'));
    expect(codes(flow)).toEqual([['saved-question-gone', 'umbrella']]);
    expect(restore(flow).value?.answers).toEqual({ weather: 'rain', basket: ['cake'], shared: ['ann'] });
  });

  test('asks a question again whose chosen option is gone', () => {
    const flow = changed((questions) =>
      questions.map((each) => (each.id === 'shared' ? ({ ...each, options: [{ id: 'bo' }] } as Question) : each)),
    );
    expect(codes(flow)).toEqual([
      ['saved-answer-dropped', 'shared'],
      ['saved-place-moved', 'review'],
    ]);
    expect(restore(flow).value).toMatchObject({ at: 'shared', changing: true });
  });

  test('goes on at the first open question when its place is gone', () => {
    const flow = changed((questions) => questions.filter(({ id }) => id !== 'basket'));
    const record = savedInterview(PICNIC, { answers: { weather: 'rain' }, at: 'basket', changing: false });
    expect(codes(flow, record)).toEqual([['saved-place-moved', 'basket']]);
    expect(restore(flow, record).value).toMatchObject({ at: 'umbrella', changing: false });
  });

  test('a question that is new on the way is asked before review', () => {
    const flow = changed((questions) =>
      questions.flatMap((each) =>
        each.id === 'basket' ? [{ id: 'blanket', kind: 'yes-no' } as Question, each] : [each],
      ),
    );
    expect(restore(flow).value).toMatchObject({ at: 'blanket', changing: true });
  });

  test('of another flow or format is refused with a reason', () => {
    expect(codes({ ...PICNIC, id: 'feast' })).toEqual([['saved-other-flow', 'picnic']]);
    expect(codes(PICNIC, { ...saved, format: 99 })).toEqual([['saved-other-format', '99']]);
    expect(codes(PICNIC, 'torn')).toEqual([['saved-unreadable', undefined]]);
  });

  test('of any shape starts an interview or is refused, never a crash', () => {
    const record = fc.oneof(
      fc.jsonValue(),
      fc.record({
        flow: fc.constant('picnic'),
        format: fc.constant(1),
        answers: fc.jsonValue(),
        place: fc.jsonValue(),
        changing: fc.jsonValue(),
      }),
      fc.record({
        flow: fc.constant('picnic'),
        format: fc.constant(1),
        answers: fc.record(
          { weather: fc.jsonValue(), basket: fc.jsonValue(), shared: fc.jsonValue() },
          { requiredKeys: [] },
        ),
        place: fc.string(),
        changing: fc.boolean(),
      }),
    );
    fc.assert(
      fc.property(record, (any) => Array.isArray(restoredInterview(PICNIC, TOY_TABLES, any).findings)),
      { numRuns: 300 },
    );
  });
});
