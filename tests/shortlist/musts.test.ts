import { describe, expect, test } from 'vitest';
import { meets } from '../../src/shortlist/musts.ts';
import { sieve } from '../../src/shortlist/sieve.ts';
import { must, shoe } from './toy.ts';

const hallShoe = shoe('hall', {}, { marks: { 'non-marking': true } });

describe('a must is met only by what is written down', () => {
  test('meets: the documented example', () => {
    expect(meets(hallShoe, { attribute: 'non-marking', value: true, reasons: [] })).toBe('yes');
  });

  test('a sole that marks is refused, and so is one nobody noted, which is said', () => {
    expect(meets(shoe('dark', {}, { marks: { 'non-marking': false } }), must('non-marking'))).toBe('no');
    expect(meets(shoe('unnoted'), must('non-marking'))).toBe('unrecorded');
  });

  test.each([
    [
      'a slip mark',
      must('safety-marks', 'slip'),
      shoe('a', {}, { lists: { 'safety-marks': ['slip', 'toe-cap'] } }),
      'yes',
    ],
    ['a slip mark', must('safety-marks', 'slip'), shoe('a', {}, { lists: { 'safety-marks': [] } }), 'no'],
    ['a slip mark', must('safety-marks', 'slip'), shoe('a'), 'unrecorded'],
    ['all black', must('colour', 'black'), shoe('a', {}, { lists: { colour: ['black'] } }), 'yes'],
    [
      'all black, with a red heel',
      must('colour', 'black'),
      shoe('a', {}, { lists: { colour: ['black', 'red'] } }),
      'no',
    ],
    ['all black', must('colour', 'black'), shoe('a', {}, { lists: { colour: [] } }), 'unrecorded'],
    ['nothing bright', must('colour-not', 'bright'), shoe('a', {}, { lists: { colour: ['blue', 'bright'] } }), 'no'],
    ['no laces', must('closure-not', 'laces'), shoe('a', {}, { lists: { closure: ['strap'] } }), 'yes'],
    ['no laces', must('closure-not', 'laces'), shoe('a', {}, { lists: { closure: ['laces', 'zip'] } }), 'no'],
    ['no leather', must('material-not', 'leather'), shoe('a'), 'unrecorded'],
    ['a strap', must('closure', 'strap'), shoe('a', {}, { lists: { closure: ['strap'] } }), 'yes'],
    ['at most 20 mm', must('stack-cap', 20), shoe('a', { 'heel-stack': 20 }), 'yes'],
    ['at most 20 mm', must('stack-cap', 20), shoe('a', { 'heel-stack': 18, 'forefoot-stack': 21 }), 'no'],
    ['at most 20 mm', must('stack-cap', 20), shoe('a', { 'forefoot-stack': 12 }), 'unrecorded'],
    ['up to 90', must('price-max', 90), shoe('a', { price: 90 }), 'yes'],
    ['up to 90', must('price-max', 90), shoe('a', { price: 90.5 }), 'no'],
    ['up to 90', must('price-max', 90), shoe('a'), 'unrecorded'],
    ["women's shelf", must('shelf', 'women'), shoe('a', {}, { shelf: 'men' }), 'no'],
    ["women's shelf", must('shelf', 'women'), shoe('a', {}, { shelf: 'any' }), 'yes'],
    ['any shelf', must('shelf', 'any'), shoe('a', {}, { shelf: 'junior' }), 'yes'],
  ])('%s: %#', (_, asked, of, met) => {
    expect(meets(of, asked)).toBe(met);
  });

  test('a must that the product does not know is a fault, not a pass', () => {
    expect(() => meets(hallShoe, must('sparkle'))).toThrow('sparkle');
  });
});

describe('what the musts leave', () => {
  const shoes = [
    hallShoe,
    shoe('cheap-hall', { price: 50 }, { marks: { 'non-marking': true } }),
    shoe('cheap', { price: 50 }, { marks: { 'non-marking': false } }),
    shoe('cheap-unnoted', { price: 50 }),
  ];
  const musts = [must('non-marking'), must('price-max', 60)];

  test('how many shoes each must takes is said, and how many of them only for want of a note', () => {
    const { left, removed, ifDropped } = sieve(shoes, musts, () => true);
    expect(left.map(({ id }) => id)).toEqual(['cheap-hall']);
    expect(removed).toEqual([
      { must: 'non-marking', value: true, count: 2, unrecorded: 1 },
      { must: 'price-max', value: 60, count: 1, unrecorded: 1 },
    ]);
    expect(ifDropped).toEqual([]);
  });

  test('when nothing is left, each single must says how many pairs it would give back, and none is dropped in silence', () => {
    const { left, ifDropped } = sieve(
      shoes.filter(({ id }) => id !== 'cheap-hall'),
      musts,
      () => true,
    );
    expect(left).toEqual([]);
    expect(ifDropped).toEqual([
      { must: 'non-marking', value: true, pairs: 2 },
      { must: 'price-max', value: 60, pairs: 1 },
    ]);
  });

  test('a size that is not on hand is a must like any other', () => {
    const { left, removed, ifDropped } = sieve(shoes, musts, ({ id }) => id !== 'cheap-hall');
    expect(left).toEqual([]);
    expect(removed.at(-1)).toEqual({ must: 'size', value: true, count: 1, unrecorded: 0 });
    expect(ifDropped).toContainEqual({ must: 'size', value: true, pairs: 1 });
  });
});
