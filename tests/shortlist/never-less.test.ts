import { describe, expect, it } from 'vitest';
import { loadKnowledge, loadStock, loadVisit } from '../../src/command-line/load.ts';
import { lineOf } from '../../src/pipeline.ts';
import { contrastTo } from '../../src/shortlist/contrast.ts';
import { pickLineUp } from '../../src/shortlist/line-up.ts';
import { byOrder } from '../../src/shortlist/order.ts';
import { score } from '../../src/shortlist/scored.ts';
import { need, shoe } from './toy.ts';

/** Less is not told apart; the toe box is judged in whole steps. */
const HALF_A_STEP = 0.5;

const ROOM = { ...need('toe-box-shape', [2, 3], 0.4), neverLess: true as const };
const NEEDS = [ROOM, need('cushion', [2, 3], 0.4)];
const SHOES = [
  shoe('roomy', { 'toe-box-shape': 3, cushion: 3 }),
  shoe('roomy-too', { 'toe-box-shape': 3, cushion: 2 }),
  shoe('roomy-firm', { 'toe-box-shape': 3, cushion: 1 }),
  shoe('narrow', { 'toe-box-shape': 1, cushion: 3 }),
];
const partsFor = (needs: typeof NEEDS) =>
  pickLineUp(SHOES.map((each) => score(each, needs)).sort(byOrder), needs, false).map(({ scored, part }) => [
    scored.shoe.id,
    part,
  ]);

describe('somebody whose feet may not feel where a shoe presses', () => {
  it('is brought no narrower pair to compare, where others would be', () => {
    const free = [{ ...ROOM, neverLess: undefined }, NEEDS[1]].flatMap(({ neverLess: _, ...each } = ROOM) => [each]);
    expect(partsFor(free as typeof NEEDS).map(([id]) => id)).toContain('narrow');
    expect(partsFor(NEEDS).map(([id]) => id)).not.toContain('narrow');
  });

  it('is never told that a pair is there for being closer at the toes', () => {
    const [roomy, , , narrow] = SHOES;
    if (!roomy || !narrow) throw new Error('there are four');
    expect(contrastTo(roomy, narrow, [ROOM])).toBeUndefined();
    expect(contrastTo(narrow, roomy, [ROOM])?.part).toBe('roomier-toes');
  });

  it('and that holds for numb feet after a clinician’s word, with diabetes or without, in the demo shop', () => {
    const knowledge = loadKnowledge();
    const { stock } = loadStock('demo/stock.csv', '2026-11-25T09:12:00');
    const { visit } = loadVisit('flows/fitting/stories/walker-diabetes-numb-toes.json', knowledge);
    for (const conditions of [['diabetes'], ['none']]) {
      const cleared = {
        ...visit,
        answers: { ...visit.answers, conditions },
        clearance: { by: 'MK', reason: 'seen at the foot clinic' },
      };
      const { shortlist, profile } = lineOf(cleared, knowledge, stock, 1, false);
      const entries = shortlist.lineUps.flatMap((lineUp) => lineUp.entries);
      expect(
        profile.needs
          .filter(({ neverLess }) => neverLess)
          .map(({ attribute }) => attribute)
          .sort(),
      ).toEqual(['toe-box-depth', 'toe-box-shape']);
      expect(entries.length).toBe(3);
      expect(entries.map(({ part }) => part)).not.toContain('closer-toes');
      const room = (at: number) => entries[at]?.shoe.numbers['toe-box-shape'] ?? 5;
      const wanted = profile.needs.find(({ attribute }) => attribute === 'toe-box-shape')?.ideal[0] ?? 0;
      for (const at of [1, 2]) expect(room(at)).toBeGreaterThan(Math.min(wanted, room(0)) - HALF_A_STEP);
    }
  });
});
