import { expect, test } from 'vitest';
import { pullIn } from '../../src/shortlist/pull-in.ts';
import { pullList } from '../../src/shortlist/pull-list.ts';
import type { Entry } from '../../src/shortlist/shortlist.ts';
import type { Box } from '../../src/stock/shoe.ts';
import { box, knowledge, must, need, profile, shoe, stockOf } from './toy.ts';

const entry = (id: string, place: number, ...boxes: Box[]): Entry => ({
  shoe: shoe(id),
  place,
  part: 'closest',
  boxes: boxes.map((each) => ({ box: each, fits: 'yes', off: 0, by: 'inner-length' })),
  lastPair: false,
  reasons: [],
  misgivings: [],
  easeIn: null,
  unknown: [],
  desirability: 1,
});

const lineUp = (forPart: string, ...entries: Entry[]) =>
  ({ for: forPart, entries, more: [], removed: [], ifDropped: [], sureness: 'feet-decide' }) as const;

test('boxes come in the order of the shelves, as people count them', () => {
  const a = box('a', { place: 'C10' });
  const b = box('b', { place: 'C2' });
  const c = box('c', { place: 'A3' });
  const pulls = pullList({ lineUps: [lineUp('all', entry('a', 1, a), entry('b', 2, b), entry('c', 3, c))] });
  expect(pulls.map(({ box: { place } }) => place)).toEqual(['A3', 'C2', 'C10']);
});

test('a box wanted for two line-ups is fetched once, and a second size is marked as such', () => {
  const first = box('a', { id: 'a-42' });
  const second = box('a', { id: 'a-43' });
  const pulls = pullList({
    lineUps: [lineUp('indoor', entry('a', 1, first, second)), lineUp('outdoor', entry('a', 3, first))],
  });
  expect(pulls.map(({ box: { id }, wanted }) => [id, wanted])).toEqual([
    [
      'a-42',
      [
        { for: 'indoor', place: 1, turn: 1 },
        { for: 'outdoor', place: 3, turn: 1 },
      ],
    ],
    ['a-43', [{ for: 'indoor', place: 1, turn: 2 }]],
  ]);
});

test('of two boxes on one shelf the one to try first comes first, whatever their numbers', () => {
  const first = box('a', { id: 'a-9', place: 'C2' });
  const second = box('a', { id: 'a-1', place: 'C2' });
  const pulls = pullList({ lineUps: [lineUp('all', entry('a', 1, first, second))] });
  expect(pulls.map(({ box: { id } }) => id)).toEqual(['a-9', 'a-1']);
});

test('a pair pulled in by hand is judged like the others, and the musts it fails are said', () => {
  const of = shoe('x', { cushion: 3 });
  const asked = profile([need('cushion', [3, 4], 0.6)], [must('non-marking')]);
  const { entry: pulled, fails } = pullIn(of, 4, asked, knowledge, stockOf([of]));
  expect(pulled).toMatchObject({ place: 4, part: 'pulled-in', reasons: [{ code: 'cushion-meets', from: 'activity' }] });
  expect(fails).toEqual(['non-marking']);
  expect(pullIn(of, 4, asked, knowledge, stockOf([])).fails).toEqual(['non-marking', 'size']);
});
