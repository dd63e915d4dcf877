import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Need, Profile } from '../../src/profile/profile.ts';
import { MOST_SAID, said } from '../../src/shortlist/meets.ts';
import { misgivingsFor } from '../../src/shortlist/misgivings.ts';
import { reasonsFor } from '../../src/shortlist/reasons.ts';
import { score } from '../../src/shortlist/scored.ts';
import type { Shoe } from '../../src/stock/shoe.ts';
import { anyNeeds, anyShoes, need, reason, shoe } from './toy.ts';

const HEALTH = new Set(['body', 'conditions']);
const reasons = (of: Shoe, needs: readonly Need[]) => reasonsFor(score(of, needs), needs, HEALTH);
const misgivings = (of: Shoe, needs: readonly Need[], facts: Profile['facts'] = {}, lastPair = false) =>
  misgivingsFor(score(of, needs), needs, { facts }, lastPair, HEALTH);
const codes = (all: readonly { code: string }[]) => all.map(({ code }) => code);

describe('what a pair meets', () => {
  test('is said the most important first, three at most of one pair by itself', () => {
    const needs = [
      need('cushion', [3, 4], 0.3),
      need('mass', [250, 300], 0.6),
      need('drop', [4, 8], 0.5),
      need('bend', [2, 4], 0.2),
    ];
    const of = shoe('a', { cushion: 3, mass: 270, drop: 6, bend: 3 });
    expect(codes(reasons(of, needs))).toEqual(['mass-meets', 'drop-meets', 'cushion-meets', 'bend-meets']);
    expect(codes(said(reasons(of, needs), true))).toEqual(['mass-meets', 'drop-meets', 'cushion-meets']);
  });

  test('is not said of a figure nobody recorded', () => {
    expect(reasons(shoe('a'), [need('cushion', [1, 5], 1)])).toEqual([]);
  });

  test('leads back to an answer, and to one that tells no health wherever there is one', () => {
    const both = { ...need('cushion', [3, 4]), reasons: [reason('body:heel'), reason('activity')] };
    expect(reasons(shoe('a', { cushion: 3 }), [both])).toEqual([
      { code: 'cushion-meets', attribute: 'cushion', from: 'activity' },
    ]);
    expect(reasons(shoe('a', { cushion: 3 }), [need('cushion', [3, 4], 0.5, 'body:heel')])).toEqual([
      { code: 'cushion-meets', attribute: 'cushion', from: 'body:heel', health: true },
    ]);
  });

  test('goes when the answer behind it goes', () => {
    fc.assert(
      fc.property(
        anyShoes(3),
        anyNeeds,
        fc.constantFrom('activity', 'liking:cushion', 'observation'),
        (shoes, needs, gone) => {
          const left = needs.filter((each) => each.reasons.every(({ from }) => from !== gone));
          for (const each of shoes) {
            const all = [...reasons(each, left), ...misgivings(each, left)];
            expect(all.map(({ from }) => from)).not.toContain(gone);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('a card that may not name health still says three things where it can', () => {
    const needs = [
      need('cushion', [3, 4], 0.9, 'body:heel'),
      need('mass', [250, 300], 0.6),
      need('drop', [4, 8], 0.5),
      need('bend', [2, 4], 0.2),
    ];
    const found = reasons(shoe('a', { cushion: 3, mass: 270, drop: 6, bend: 3 }), needs);
    expect(codes(said(found, true))).toEqual(['cushion-meets', 'mass-meets', 'drop-meets']);
    expect(codes(said(found, false))).toEqual(['mass-meets', 'drop-meets', 'bend-meets']);
  });
});

describe('what speaks against a pair', () => {
  test('is said with its direction, what costs most first', () => {
    const needs = [need('mass', [250, 300], 0.6), need('drop', [4, 8], 0.6)];
    expect(codes(misgivings(shoe('a', { mass: 320, drop: 2 }), needs))).toEqual(['drop-less', 'mass-more']);
  });

  test('a hair outside the ideal is not worth a word', () => {
    expect(misgivings(shoe('a', { mass: 303 }), [need('mass', [250, 300], 0.6)])).toEqual([]);
  });

  test('a figure nobody recorded is a misgiving where it matters, and not where it hardly does', () => {
    expect(codes(misgivings(shoe('a'), [need('cushion', [3, 4], 0.6)]))).toEqual(['cushion-unknown']);
    expect(misgivings(shoe('a'), [need('cushion', [3, 4], 0.2)])).toEqual([]);
  });

  test('tall and soft comes first for somebody of 65 or over, and after falls; for others it is none', () => {
    const tall = shoe('a', { 'heel-stack': 38, cushion: 5 });
    expect(misgivings(tall, [], { 'person-older': true })).toEqual([{ code: 'tall-and-soft', from: 'age-band' }]);
    expect(misgivings(tall, [], { conditions: ['falls-or-unsteady'] })).toEqual([
      { code: 'tall-and-soft', from: 'conditions', health: true },
    ]);
    expect(misgivings(tall, [])).toEqual([]);
    expect(misgivings(shoe('b', { 'heel-stack': 38, cushion: 2 }), [], { 'person-older': true })).toEqual([]);
    expect(misgivings(shoe('c', { cushion: 5 }), [], { 'person-older': true })).toEqual([]);
  });

  test('the last pair and a model that runs small are said, traced to the stock', () => {
    expect(misgivings(shoe('a', {}, { sizeOffset: -4 }), [], {}, true)).toEqual([
      { code: 'runs-small', from: 'stock' },
      { code: 'last-pair', from: 'stock' },
    ]);
    expect(codes(misgivings(shoe('a', {}, { sizeOffset: 4 }), []))).toEqual(['runs-large']);
  });
});

test('never more than three reasons and three misgivings are said, whatever is needed', () => {
  fc.assert(
    fc.property(anyShoes(3), anyNeeds, fc.boolean(), (shoes, needs, tells) => {
      for (const each of shoes) {
        expect(said(reasons(each, needs), tells).length).toBeLessThanOrEqual(MOST_SAID);
        const against = said(misgivings(each, needs, { 'person-older': true }, true), tells);
        expect(against.length).toBeLessThanOrEqual(MOST_SAID);
        if (!tells) for (const { from } of against) expect(from).not.toContain('body');
      }
    }),
    { numRuns: 60 },
  );
});
