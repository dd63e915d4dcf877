import { describe, expect, test } from 'vitest';
import type { Must, Need, Preference } from '../../src/profile/profile.ts';
import { compareLineUps, type Made } from '../../src/shortlist/compare.ts';
import { shortlistOf } from '../../src/shortlist/shortlist-of.ts';
import type { Shoe } from '../../src/stock/shoe.ts';
import { knowledge, must, need, profile, shoe, stockOf, visit } from './toy.ts';

function made(
  shoes: readonly Shoe[],
  needs: readonly Need[],
  musts: readonly Must[] = [],
  preferences: readonly Preference[] = [],
): Made {
  const whole = { ...profile(needs, musts), preferences };
  const lineUp = shortlistOf(whole, visit, knowledge, stockOf(shoes), 1).lineUps[0];
  if (lineUp === undefined) throw new Error('no line-up');
  return { lineUp, needs, musts, preferences };
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

  test('a pair comes up because it is sold for what is done in it', () => {
    const [walking, court] = [
      shoe('walk', { cushion: 5 }, { use: ['walking'] }),
      shoe('court', { cushion: 3.8 }, { use: ['court'] }),
    ];
    const use: Preference = {
      kind: 'use',
      code: 'made-for',
      importance: 1,
      parts: [{ uses: ['court'], share: 1 }],
      reasons: [{ from: 'activity', rule: 'made-for', source: 'common-practice', grade: 'common-practice' }],
    };
    expect(said(made([walking, court], [CUSHION]), made([walking, court], [CUSHION], [], [use]))).toEqual([
      ['walk', 'down', 'made-for', ['activity']],
      ['court', 'up', 'made-for', ['activity']],
    ]);
  });

  test('a need that newly matters most is named by that answer', () => {
    const grip = need('lug-depth', [3, 5], 0.3, 'floors');
    const first: Need = { ...grip, importance: 1, raisedBy: 'matters-most:grip' };
    expect(said(made([soft, firm], [CUSHION, grip]), made([soft, firm], [CUSHION, first]))).toEqual([
      ['soft', 'down', 'lug-depth', ['matters-most:grip']],
      ['firm', 'up', 'lug-depth', ['matters-most:grip']],
    ]);
  });

  test('when only the stock changed, no answer is blamed', () => {
    expect(said(made([soft, firm], [CUSHION]), made([firm], [CUSHION]))).toEqual([
      ['soft', 'went-out', undefined, []],
      ['firm', 'up', undefined, []],
    ]);
  });
});
