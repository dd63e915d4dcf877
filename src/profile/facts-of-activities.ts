import type { Answers } from '../flow/answers.ts';
import { type Knowledge, LOADS } from '../flow/knowledge.ts';
import { type ActivityPart, activityParts } from './activity-parts.ts';
import { roundFact, type Told } from './told.ts';

/** What the activities load, blended by their shares, and the toe room they want. */
export function factsOfActivities(answers: Answers, knowledge: Knowledge): readonly Told[] {
  const parts = activityParts(answers, knowledge);
  return [...loadFacts(parts), ...toeRoomFacts(parts), ...mainFacts(parts)];
}

/** A load is traced to the activity that brings most of it. */
function loadFacts(parts: readonly ActivityPart[]): readonly Told[] {
  const told = parts.filter((part) => part.loads.length > 0);
  const whole = told.reduce((sum, part) => sum + part.share, 0);
  if (whole === 0) return [];
  return LOADS.map((load) => {
    const brought = told.flatMap((part) =>
      part.loads
        .filter((each) => each.load === load)
        .map(({ value, from }) => ({ from, amount: (value * part.share) / whole })),
    );
    const most = brought.reduce((best, each) => (each.amount > best.amount ? each : best));
    const value = roundFact(brought.reduce((sum, each) => sum + each.amount, 0));
    return { key: `load-${load}`, value, from: most.from };
  });
}

function toeRoomFacts(parts: readonly ActivityPart[]): readonly Told[] {
  const rows = parts.flatMap((part) => (part.row ? [{ ...part, row: part.row }] : []));
  const whole = rows.reduce((sum, part) => sum + part.share, 0);
  const [first] = rows;
  if (!first) return [];
  const blend = (end: 0 | 1): number =>
    roundFact(rows.reduce((sum, part) => sum + part.row.toeRoom.range[end] * part.share, 0) / whole);
  return [
    { key: 'toe-room-low', value: blend(0), from: first.question },
    { key: 'toe-room-high', value: blend(1), from: first.question },
  ];
}

/** Only the main activity can call for another kind of footwear: the second one may have its own already. */
function mainFacts(parts: readonly ActivityPart[]): readonly Told[] {
  const main = parts.find((part) => part.question === 'activity');
  if (!main) return [];
  const from = main.question;
  const kind = main.row?.otherFootwear;
  return [
    { key: 'activity-group', value: main.row?.group ?? 'else', from },
    ...(kind === undefined ? [] : [{ key: 'other-footwear', value: kind, from }]),
  ];
}
