import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addUp, type Count, GAP_TOPICS, type Gaps, NO_GAPS } from '../../src/gaps/gaps.ts';
import { gapsOf } from '../../src/gaps/gaps-of.ts';
import { SHOWN_FROM, shownGaps, usualMinutes } from '../../src/gaps/shown.ts';
import { shortlistOf } from '../../src/shortlist/shortlist-of.ts';
import type { Choice } from '../../src/visit/visit.ts';
import { knowledge, must, need, profile, shoe, stockOf, visit } from '../shortlist/toy.ts';

const closed = (
  of: ReturnType<typeof profile>,
  shoes: Parameters<typeof stockOf>[0],
  choice?: Choice,
  minutes?: number,
): Gaps =>
  gapsOf(
    { ...visit, ...(choice && { choice }) },
    of,
    shortlistOf(of, visit, knowledge, stockOf(shoes), 1),
    knowledge.flow,
    minutes,
  );
const rows = ({ counts }: Gaps) => counts.map(({ topic, what, count }) => `${topic} ${what} ${count}`);
const none = (reason: Extract<Choice, { kind: 'none' }>['reason']): Choice => ({ kind: 'none', reason });

describe('what one closed visit says of the range', () => {
  test('a need that no pair meets, with the direction that was wanted', () => {
    expect(rows(closed(profile([need('mass', [200, 250], 0.6)]), [shoe('a', { mass: 300 })]))).toEqual([
      'need mass-less 1',
    ]);
    expect(rows(closed(profile([need('mass', [400, 450], 0.6)]), [shoe('a', { mass: 300 })]))).toEqual([
      'need mass-more 1',
    ]);
  });

  test('nothing of a need that is met by one pair, hardly matters, or is recorded of none', () => {
    const met = [shoe('a', { mass: 300 }), shoe('b', { mass: 220 })];
    expect(rows(closed(profile([need('mass', [200, 250], 0.6)]), met))).toEqual([]);
    expect(rows(closed(profile([need('mass', [200, 250], 0.2)]), [shoe('a', { mass: 300 })]))).toEqual([]);
    expect(rows(closed(profile([need('mass', [200, 250], 0.6)]), [shoe('a')]))).toEqual([]);
  });

  test('the must that emptied the line-up', () => {
    const asked = profile([need('mass', [200, 250])], [must('safety-marks', 'slip'), must('non-marking')]);
    const almost = shoe('a', {}, { marks: { 'non-marking': true } });
    expect(rows(closed(asked, [almost]))).toEqual(['must safety-marks slip 1']);
  });

  test('the size that emptied it, with its shelf', () => {
    const labels = { mondopoint: '330', eu: '51', uk: '15', usMen: '16', usWomen: '17' };
    const of = profile([], [], { shelf: 'men' });
    const size = { ...of.size, footLength: 330, innerLength: [340, 345] as const, labels };
    expect(rows(closed({ ...of, size }, [shoe('a')]))).toEqual(['size men eu 51 1']);
  });

  test('whether the first pair was chosen, and why none was', () => {
    const of = profile([need('mass', [200, 250])]);
    const shoes = [shoe('a', { mass: 220 }), shoe('b', { mass: 280 })];
    const pair = (id: string): Choice => ({ kind: 'pair', shoe: id, box: `${id}-box` });
    expect(rows(closed(of, shoes, pair('a')))).toEqual(['first-pair chosen 1']);
    expect(rows(closed(of, shoes, pair('b')))).toEqual(['first-pair another 1']);
    expect(rows(closed(of, shoes, none('price')))).toEqual(['first-pair none 1', 'no-sale price 1']);
    expect(rows(closed(of, shoes))).toEqual([]);
  });

  test('other footwear that was asked for', () => {
    expect(rows(closed({ ...profile([]), outcome: 'other-footwear', otherFootwear: 'studs' }, []))).toEqual([
      'other-footwear studs 1',
    ]);
  });
});

const anyCount: fc.Arbitrary<Count> = fc.record({
  topic: fc.constantFrom(...GAP_TOPICS),
  what: fc.constantFrom('mass-less', 'price', 'other'),
  health: fc.boolean(),
  count: fc.integer({ min: 1, max: 4 }),
});
const anyGaps: fc.Arbitrary<Gaps> = fc.record({
  visits: fc.integer({ min: 0, max: 9 }),
  minutes: fc.record({ sum: fc.nat(200), visits: fc.nat(9) }),
  counts: fc.uniqueArray(anyCount, { selector: ({ topic, what, health }) => `${topic} ${what} ${health}` }),
});

describe('adding up', () => {
  test('addUp: the documented example', () => {
    const one = closed(profile([]), []);
    expect(addUp([one, one]).visits).toBe(2);
  });

  test('is the same in any order, in any grouping, and nothing adds nothing', () => {
    fc.assert(
      fc.property(fc.array(anyGaps, { maxLength: 6 }), (all) => {
        const whole = addUp(all);
        expect(addUp(all.toReversed())).toEqual(whole);
        expect(addUp([addUp(all.slice(0, 2)), addUp(all.slice(2)), NO_GAPS])).toEqual(whole);
      }),
    );
  });

  test('minutes are averaged over the visits that were timed', () => {
    const of = profile([]);
    const all = addUp([closed(of, [], undefined, 9), closed(of, [], undefined, 12), closed(of, [])]);
    expect(all.visits).toBe(3);
    expect(usualMinutes(all)).toBe(11);
    expect(usualMinutes(NO_GAPS)).toBeUndefined();
  });
});

describe('what a shop may see', () => {
  const times = (count: number, gaps: Gaps) => addUp(Array.from({ length: count }, () => gaps));
  const fromBody = closed(profile([need('cushion', [4, 5], 0.6, 'body:heel')]), [shoe('a', { cushion: 1 })]);
  const fromLiking = closed(profile([need('cushion', [4, 5], 0.6, 'liking:cushion')]), [shoe('a', { cushion: 1 })]);

  test('a row that rests on health answers alone appears from five on; any other from one', () => {
    expect(shownGaps(times(4, fromBody))).toEqual([]);
    expect(shownGaps(times(5, fromBody)).map(({ count }) => count)).toEqual([5]);
    expect(shownGaps(fromLiking).map(({ count }) => count)).toEqual([1]);
  });

  test('four people sent to a clinician cannot be worked out from the other reasons', () => {
    const of = profile([]);
    const all = addUp([
      times(4, closed(of, [], none('clinician-first'))),
      times(2, closed(of, [], none('price'))),
      closed(of, [], none('other')),
    ]);
    const shown = shownGaps(all).filter(({ topic }) => topic === 'no-sale');
    expect(shown.map(({ what, count }) => [what, count])).toEqual([
      ['other', 5],
      ['price', 2],
    ]);
  });

  test('no health row below five is ever shown, whatever was added up', () => {
    fc.assert(
      fc.property(fc.array(anyGaps, { maxLength: 4 }), (all) => {
        const gaps = addUp(all);
        const shown = shownGaps(gaps);
        for (const { health, count } of shown) if (health) expect(count).toBeGreaterThanOrEqual(SHOWN_FROM);
        const noSale = (list: readonly Count[]) =>
          list.filter(({ topic }) => topic === 'no-sale').reduce((sum, { count }) => sum + count, 0);
        expect(noSale(shown)).toBe(noSale(gaps.counts));
      }),
    );
  });

  test('the sums hold nothing of a person: no answer, no day, no ticket', () => {
    const answered = {
      ...visit,
      answers: { activity: 'toy-hopping', body: { heel: { when: 'now', seen: false } } },
    } as const;
    const of = profile([need('cushion', [4, 5], 0.6, 'body:heel')]);
    const shortlist = shortlistOf(of, answered, knowledge, stockOf([shoe('a', { cushion: 1 })]), 1);
    const text = JSON.stringify(gapsOf(answered, of, shortlist, knowledge.flow, 9));
    for (const told of ['heel', 'toy-hopping', 'now', '2026']) expect(text).not.toContain(told);
  });
});
