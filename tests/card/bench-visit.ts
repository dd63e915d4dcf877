import type { TryOn, Visit } from '../../src/visit/visit.ts';
import { sampleLine } from './sample-lines.ts';

/** What an invented fitter wrote down at the bench of a story: answers changed, feet, three pairs on, and a choice. */
export function atTheBench(story: string): Pick<Visit, 'overrides' | 'observation' | 'tryOns' | 'choice'> {
  const changed: Pick<Visit, 'overrides' | 'observation'> = {
    overrides: [
      { question: 'floors', value: { 'sprung-wood': 'mostly' }, by: 'MK', reason: 'asked-again' },
      {
        question: 'now-size',
        value: { value: 42.5, unit: 'eu' },
        by: 'MK',
        reason: 'read on the tongue of the old pair',
      },
      { question: 'ankles', value: ['over-six-weeks'], by: 'MK', reason: 'mistapped' },
    ],
    observation: {
      feet: {
        left: { length: 262, ballGirth: 248, width: 101, heelWidth: 66, instep: 251 },
        right: { length: 265, ballGirth: 250.5, width: 102 },
        posture: 'standing',
        sock: 'worn-sock',
        time: 'late',
      },
    },
  };
  const { shortlist } = sampleLine(story, changed);
  const [first, second, third] = shortlist.lineUps.flatMap(({ entries }) => entries);
  if (!first || !second || !third) throw new Error(`${story} has three pairs to try`);
  const boxOf = ({ boxes }: typeof first, at = 0): string => boxes[Math.min(at, boxes.length - 1)]?.box.id ?? 'gone';
  const tryOns: readonly TryOn[] = [
    {
      shoe: first.shoe.id,
      box: boxOf(first),
      rank: 2,
      comfort: 64,
      size: 'right',
      notes: { 'lace-gap': 'even', heel: 'lifts-a-little', midfoot: 'snug', 'toe-room': 'right', 'task-walk': 'good' },
      rubs: ['left-heel', 'right-heel', 'right-little-toe'],
    },
    {
      shoe: second.shoe.id,
      box: boxOf(second),
      rank: 1,
      comfort: 82,
      size: 'right',
      notes: { 'lace-gap': 'even', heel: 'holds', midfoot: 'snug', 'toe-room': 'right', bend: 'at-ball' },
      rubs: [],
    },
    {
      shoe: third.shoe.id,
      box: boxOf(third),
      rank: 3,
      comfort: 35,
      size: 'too-small',
      notes: { 'lace-gap': 'wide', heel: 'holds', midfoot: 'presses', 'toe-room': 'short', collar: 'touches' },
      rubs: ['left-ball-outer'],
    },
  ];
  return {
    ...changed,
    tryOns,
    choice: { kind: 'pair', shoe: second.shoe.id, box: boxOf(second), second: first.shoe.id },
  };
}
