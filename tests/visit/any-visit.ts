import fc from 'fast-check';
import { type Answer, type Answers, BODY_WHEN, BODY_WORDS, SHARES, YES_NO } from '../../src/flow/answers.ts';
import type { Flow, Question } from '../../src/flow/format.ts';
import { allOptions, type Tables } from '../../src/flow/options.ts';
import { questionsOf } from '../../src/flow/route.ts';
import type { Observation } from '../../src/observation/observation.ts';
import { HOLDS, type Visit } from '../../src/visit/visit.ts';

/** Any valid answer to a question. */
export function anyAnswer(question: Question, tables: Tables): fc.Arbitrary<Answer> {
  const options = allOptions(question, tables);
  const together = options.filter(({ alone }) => !alone).map(({ id }) => id);
  const alone = options.filter((option) => option.alone).map(({ id }) => id);
  switch (question.kind) {
    case 'one-of':
      return fc.constantFrom(...options.map(({ id }) => id));
    case 'yes-no':
      return fc.constantFrom(...YES_NO);
    case 'some-of':
    case 'signs': {
      const most = question.kind === 'some-of' ? (question.most ?? together.length) : together.length;
      const several = fc.subarray(together, { minLength: 1, maxLength: Math.min(most, together.length) });
      return alone.length > 0 ? fc.oneof(several, fc.constantFrom(...alone.map((id) => [id]))) : several;
    }
    case 'number': {
      const quantity = fc.constantFrom(...question.units).chain(({ id, from, to }) =>
        fc
          .oneof(
            fc.double({ min: from, max: to, noNaN: true }),
            fc.integer({ min: from * 2, max: to * 2 }).map((n) => n / 2),
          )
          // JSON knows no minus zero.
          .map((value) => ({ value: value + 0, unit: id })),
      );
      return question.notSure ? fc.oneof(quantity, fc.constant('not-sure')) : quantity;
    }
    case 'shares': {
      const several = fc
        .subarray(together, { minLength: 1 })
        .chain((ids) => fc.tuple(...ids.map((id) => fc.tuple(fc.constant(id), fc.constantFrom(...SHARES)))))
        .map((pairs) => Object.fromEntries(pairs));
      return alone.length > 0
        ? fc.oneof(several, fc.constantFrom(...alone.map((id) => ({ [id]: 'mostly' }))))
        : several;
    }
    case 'against-today':
      return fc.record(
        Object.fromEntries(question.properties.map(({ id, choices }) => [id, fc.constantFrom(...choices)])),
        { requiredKeys: [] },
      ) as fc.Arbitrary<Answer>;
    case 'body-map':
      return fc.oneof(
        fc.constantFrom(...BODY_WORDS),
        fc.record(
          Object.fromEntries(
            question.regions.map(({ id }) => [
              id,
              fc.record({ when: fc.constantFrom(...BODY_WHEN), seen: fc.boolean() }),
            ]),
          ),
          { requiredKeys: [] },
        ) as fc.Arbitrary<Answer>,
      );
  }
}

/** Valid answers to any of the flow's questions, on one route or not. */
export const anyAnswers = (flow: Flow, tables: Tables): fc.Arbitrary<Answers> =>
  fc.record(Object.fromEntries(questionsOf(flow).map((question) => [question.id, anyAnswer(question, tables)])), {
    requiredKeys: [],
  }) as fc.Arbitrary<Answers>;

const note = fc.string({ maxLength: 40 });
const foot = fc.record(
  { length: fc.integer({ min: 90, max: 330 }), width: fc.integer({ min: 40, max: 140 }) },
  { requiredKeys: [] },
);
const observation: fc.Arbitrary<Observation> = fc.record(
  {
    feet: fc.record(
      {
        left: foot,
        right: foot,
        posture: fc.constantFrom('standing', 'seated', 'one-foot'),
        sock: fc.constantFrom('worn-sock', 'thin-sock', 'barefoot'),
      },
      { requiredKeys: ['posture', 'sock'] },
    ),
    oldPair: fc.record(
      { spill: fc.constantFrom('none', 'inner', 'outer', 'both'), insoleLength: fc.integer({ min: 100, max: 350 }) },
      { requiredKeys: [] },
    ),
    roll: fc.record({
      left: fc.constantFrom('not-told', 'in', 'even', 'out'),
      right: fc.constantFrom('not-told', 'in', 'even', 'out'),
      by: note,
      during: fc.constantFrom('own-movement', 'walk'),
    }),
    note,
  },
  { requiredKeys: [] },
) as fc.Arbitrary<Observation>;

/** Any visit a kiosk could hold, valid throughout. */
export function anyVisit(flow: Flow, tables: Tables): fc.Arbitrary<Visit> {
  const override = fc
    .constantFrom(...questionsOf(flow))
    .chain((question) =>
      fc.record({ question: fc.constant(question.id), value: anyAnswer(question, tables), by: note, reason: note }),
    );
  return fc.record(
    {
      flow: fc.constant(flow.id),
      flowVersion: fc.constant(flow.version),
      language: fc.constantFrom(...flow.languages),
      answers: anyAnswers(flow, tables),
      overrides: fc.array(override, { maxLength: 3 }),
      clearance: fc.record({ by: note, reason: note }),
      observation,
      hold: fc.constantFrom(...HOLDS),
      tryOns: fc.array(
        fc.record(
          {
            shoe: note,
            box: note,
            rank: fc.integer({ min: 1, max: 9 }),
            comfort: fc.integer({ min: 0, max: 100 }),
            size: fc.constantFrom('too-small', 'right', 'too-big'),
            notes: fc.dictionary(fc.constantFrom('heel', 'toes'), note),
            rubs: fc.array(note, { maxLength: 2 }),
          },
          { requiredKeys: ['shoe', 'box', 'notes', 'rubs'] },
        ),
        { maxLength: 2 },
      ),
      choice: fc.oneof(
        fc.record(
          { kind: fc.constant('pair'), shoe: note, box: note, second: note },
          { requiredKeys: ['kind', 'shoe', 'box'] },
        ),
        fc.record({ kind: fc.constant('none'), reason: fc.constantFrom('price', 'other', 'keeps-old') }),
      ),
      printHealth: fc.boolean(),
    },
    { requiredKeys: ['flow', 'flowVersion', 'language', 'answers', 'overrides', 'observation', 'tryOns'] },
  ) as fc.Arbitrary<Visit>;
}

/** A visit whose answers are these, with nothing else. */
export const visitOf = (flow: Flow, answers: Answers, more: Partial<Visit> = {}): Visit => ({
  flow: flow.id,
  flowVersion: flow.version,
  language: 'en',
  answers,
  overrides: [],
  observation: {},
  tryOns: [],
  ...more,
});
