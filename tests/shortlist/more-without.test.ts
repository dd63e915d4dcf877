import { describe, expect, it } from 'vitest';
import type { Preference } from '../../src/profile/profile.ts';
import { moreWithout } from '../../src/shortlist/more-without.ts';
import { sieve } from '../../src/shortlist/sieve.ts';
import type { Shoe } from '../../src/stock/shoe.ts';
import { must, reason, shoe } from './toy.ts';

const priced = (id: string, price: number, use = 'court'): Shoe => shoe(id, { price }, { use: [use] });
const forCourt: Preference = {
  kind: 'use',
  code: 'made-for',
  importance: 0.6,
  reasons: [reason('activity')],
  parts: [{ uses: ['court'], share: 1 }],
};
const upTo = (price: number) => [must('price-max', price, 'budget'), must('shelf', 'any', 'shelf')];
const said = (shoes: readonly Shoe[], price: number, picked: number, inSize = (_: Shoe) => true) => {
  const sieved = sieve(shoes, upTo(price), inSize);
  return moreWithout(sieved, sieved.left.slice(0, picked), [forCourt]);
};

describe('somebody whose budget leaves little', () => {
  it('is told how many pairs there would be without it, where the line-up is short', () => {
    expect(said([priced('a', 60), priced('b', 70), priced('c', 80)], 60, 3)).toEqual({
      must: 'price-max',
      value: 60,
      pairs: 3,
    });
  });

  it('is told of pairs made for the sport, where one of the three is sold for something else', () => {
    const shoes = [
      priced('a', 60),
      priced('b', 55, 'gym'),
      priced('c', 50, 'gym'),
      priced('d', 90),
      priced('e', 95, 'gym'),
    ];
    expect(said(shoes, 60, 3)).toEqual({ must: 'price-max', value: 60, pairs: 2, madeFor: true });
  });

  it('is told nothing where three pairs are made for it, or nothing more would come', () => {
    expect(said([priced('a', 60), priced('b', 55), priced('c', 50), priced('d', 90)], 60, 3)).toBeUndefined();
    expect(said([priced('a', 60), priced('b', 55, 'gym')], 60, 3)).toBeUndefined();
    expect(
      said([priced('a', 60), priced('b', 55, 'gym'), priced('c', 50), priced('d', 90, 'gym')], 60, 3),
    ).toBeUndefined();
  });

  it('is never told to give up the size, and nothing where nothing is left: that is said by itself', () => {
    const small = priced('b', 55);
    expect(said([priced('a', 50), small], 60, 1, (each) => each !== small)).toBeUndefined();
    expect(said([priced('a', 90)], 60, 3)).toBeUndefined();
  });
});
