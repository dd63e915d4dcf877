import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Question } from '../../src/flow/format.ts';
import { offeredOptions } from '../../src/flow/options.ts';
import { questionsOf } from '../../src/flow/route.ts';
import { answerFindings, isAnswer } from '../../src/flow/valid-answer.ts';
import { KENNEL, PICNIC, POND, TOY_TABLES } from './toy-flows.ts';

const question = (id: string): Question => {
  const found = [PICNIC, POND, KENNEL].flatMap(questionsOf).find((each) => each.id === id);
  if (!found) throw new Error(id);
  return found;
};
const codes = (id: string, value: unknown) => answerFindings(question(id), value, TOY_TABLES).map(({ code }) => code);

const WILL_DO: readonly (readonly [string, unknown])[] = [
  ['weather', 'sun'],
  ['umbrella', 'not-sure'],
  ['basket', ['cake', 'soup']],
  ['basket', ['none']],
  ['play', 'kite-flying'],
  ['play', 'something-else'],
  ['depth', { value: 100, unit: 'cm' }],
  ['depth', 'not-sure'],
  ['bank', { moss: 'mostly', reeds: 'now-and-then' }],
  ['bank', { 'not-sure': 'mostly' }],
  ['itch', {}],
  ['itch', 'skipped'],
  ['itch', { paw: { when: 'now', seen: true } }],
  ['collar', {}],
  ['collar', { width: 'wider' }],
];
const WILL_NOT: readonly (readonly [string, unknown, string])[] = [
  ['weather', 'snow', 'answer-not-offered'],
  ['weather', ['sun'], 'answer-not-one-word'],
  ['umbrella', true, 'answer-not-one-word'],
  ['basket', 'cake', 'answer-not-a-list'],
  ['basket', [], 'answer-empty'],
  ['basket', ['cake', 'cake'], 'answer-twice'],
  ['basket', ['cake', 'none'], 'answer-not-alone'],
  ['basket', ['bricks'], 'answer-not-offered'],
  ['shared', ['ann', 'bo', 'cy'], 'answer-too-many'],
  ['depth', { value: 101, unit: 'cm' }, 'answer-out-of-range'],
  ['depth', { value: 3, unit: 'miles' }, 'answer-unit-not-offered'],
  ['depth', { value: '3', unit: 'cm' }, 'answer-not-a-quantity'],
  ['depth', 3, 'answer-not-a-quantity'],
  ['bank', ['moss'], 'answer-not-a-map'],
  ['bank', {}, 'answer-empty'],
  ['bank', { moss: 'always' }, 'answer-not-offered'],
  ['bank', { moss: 'mostly', 'not-sure': 'mostly' }, 'answer-not-alone'],
  ['itch', { paw: 'now' }, 'answer-not-a-mark'],
  ['itch', { tail: { when: 'now', seen: true } }, 'answer-not-offered'],
  ['itch', { paw: { when: 'someday', seen: true } }, 'answer-not-offered'],
  ['itch', 'none', 'answer-not-offered'],
  ['collar', { width: 'pinker' }, 'answer-not-offered'],
];

describe('an answer', () => {
  for (const [id, value] of WILL_DO)
    test(`${JSON.stringify(value)} to ${id} will do`, () => expect(codes(id, value)).toEqual([]));
  for (const [id, value, code] of WILL_NOT) {
    test(`${JSON.stringify(value)} to ${id} gives ${code}`, () => expect(codes(id, value)).toEqual([code]));
  }

  test('to an option that is not on screen will not do there', () => {
    const basket = question('basket');
    const onScreen = offeredOptions(basket, TOY_TABLES, { weather: 'sun' });
    expect(isAnswer(basket, ['soup'], TOY_TABLES, onScreen)).toBe(false);
    expect(isAnswer(basket, ['soup'], TOY_TABLES)).toBe(true);
  });

  test('of any kind is accepted or refused, never a crash', () => {
    fc.assert(
      fc.property(fc.constantFrom(...[PICNIC, POND, KENNEL].flatMap(questionsOf)), fc.jsonValue(), (each, value) => {
        expect(Array.isArray(answerFindings(each, value, TOY_TABLES))).toBe(true);
      }),
    );
  });
});
