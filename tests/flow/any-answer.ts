import fc from 'fast-check';
import { type Answer, BODY_WHEN, BODY_WORDS, SHARES, YES_NO } from '../../src/flow/answers.ts';
import type { Flow, Option, Question } from '../../src/flow/format.ts';
import { allOptions, type Tables } from '../../src/flow/options.ts';
import { questionsOf } from '../../src/flow/route.ts';

/** Any answer that a question takes when these options are on screen. */
export function anyAnswer(question: Question, offered: readonly Option[]): fc.Arbitrary<Answer> {
  const together = offered.filter(({ alone }) => !alone).map(({ id }) => id);
  const apart = offered.filter(({ alone }) => alone).map(({ id }) => id);
  switch (question.kind) {
    case 'one-of':
      return fc.constantFrom(...offered.map(({ id }) => id));
    case 'yes-no':
      return fc.constantFrom(...YES_NO);
    case 'some-of':
    case 'signs': {
      const most = (question.kind === 'some-of' && question.most) || together.length;
      const some = fc.subarray(together, { minLength: 1, maxLength: Math.min(most, together.length) });
      return apart.length > 0 ? fc.oneof(some, fc.constantFrom(...apart.map((id) => [id]))) : some;
    }
    case 'number': {
      const quantities = question.units.map(({ id, from, to }) =>
        fc.integer({ min: Math.ceil(from), max: Math.floor(to) }).map((value) => ({ value, unit: id })),
      );
      return question.notSure ? fc.oneof(...quantities, fc.constant('not-sure')) : fc.oneof(...quantities);
    }
    case 'shares':
      return fc
        .subarray(together, { minLength: 1 })
        .chain((ids) => fc.record(Object.fromEntries(ids.map((id) => [id, fc.constantFrom(...SHARES)]))));
    case 'against-today': {
      const choices = question.properties.map(({ id, choices: each }) => [id, fc.constantFrom(...each)] as const);
      return fc.record(Object.fromEntries(choices), { requiredKeys: [] }) as fc.Arbitrary<Answer>;
    }
    case 'body-map': {
      const mark = fc.record({ when: fc.constantFrom(...BODY_WHEN), seen: fc.boolean() });
      const marks = fc.record(Object.fromEntries(question.regions.map(({ id }) => [id, mark])), { requiredKeys: [] });
      return fc.oneof(marks as fc.Arbitrary<Answer>, fc.constantFrom(...BODY_WORDS));
    }
  }
}

/** Any answers to any of a flow's questions, on the route or off it. */
export function anyAnswers(flow: Flow, tables: Tables): fc.Arbitrary<Readonly<Record<string, Answer>>> {
  const each = questionsOf(flow).map(
    (question) => [question.id, anyAnswer(question, allOptions(question, tables))] as const,
  );
  return fc.record(Object.fromEntries(each), { requiredKeys: [] }) as fc.Arbitrary<Readonly<Record<string, Answer>>>;
}
