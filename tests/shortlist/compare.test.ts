import { describe, expect, test } from 'vitest';
import type { Must, Need } from '../../src/profile/profile.ts';
import { compareLineUps, type Made } from '../../src/shortlist/compare.ts';
import { shortlistOf } from '../../src/shortlist/shortlist-of.ts';
import type { Shoe } from '../../src/stock/shoe.ts';
import { knowledge, must, need, profile, shoe, stockOf, visit } from './toy.ts';

function made(shoes: readonly Shoe[], needs: readonly Need[], musts: readonly Must[] = []): Made {
  const lineUp = shortlistOf(profile(needs, musts), visit, knowledge, stockOf(shoes), 1).lineUps[0];
  if (lineUp === undefined) throw new Error('no line-up');
  return { lineUp, needs, musts };
}

const said = (before: Made, after: Made) =>
  compareLineUps(before, after).map(({ shoe: { id }, what, by, from }) => [id, what, by, from]);

const soft = shoe('soft', { cushion: 5, 'lug-depth': 1 });
const firm = shoe('firm', { cushion: 2, 'lug-depth': 4 });
const CUSHION = need('cushion', [4, 5], 0.6, 'liking:cushion');

describe('what moved between two line-ups, and why', () => {
  test('nothing when nothing changed', () => {
    expect(said(made([soft, firm], [CUSHION]), made([soft, firm], [CUSHION]))).toEqual([]);
  });

  test('a pair comes up because the floor is wet', () => {
    const wet = need('lug-depth', [3, 5], 1, 'wet');
    expect(said(made([soft, firm], [CUSHION]), made([soft, firm], [CUSHION, wet]))).toEqual([
      ['soft', 'down', 'lug-depth', ['wet']],
      ['firm', 'up', 'lug-depth', ['wet']],
    ]);
  });

  test('a pair goes out because of a must, and comes back in without it', () => {
    const hall = shoe('hall', { cushion: 4 }, { marks: { 'non-marking': true } });
    const free = made([soft, hall], [CUSHION]);
    const ruled = made([soft, hall], [CUSHION], [must('non-marking')]);
    expect(said(free, ruled)).toContainEqual(['soft', 'went-out', 'non-marking', ['place-rules']]);
    expect(said(ruled, free)).toContainEqual(['soft', 'came-in', 'non-marking', ['place-rules']]);
  });

  test('when only the stock changed, no answer is blamed', () => {
    expect(said(made([soft, firm], [CUSHION]), made([firm], [CUSHION]))).toEqual([
      ['soft', 'went-out', undefined, []],
      ['firm', 'up', undefined, []],
    ]);
  });
});
