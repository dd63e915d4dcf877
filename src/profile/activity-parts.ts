import type { Answers } from '../flow/answers.ts';
import { type Activity, type Knowledge, LOADS, type Load } from '../flow/knowledge.ts';
import { elseLoads } from './else-loads.ts';
import { secondShare } from './share-weights.ts';

/** One activity's share in what the shoe is for: 1 in all. */
export interface ActivityPart {
  readonly share: number;
  /** The question that named it. */
  readonly question: string;
  /** Absent for "something else". */
  readonly row?: Activity;
  readonly loads: readonly { readonly load: Load; readonly value: number; readonly from: string }[];
}

export const SOMETHING_ELSE = 'something-else';

/** The main and the second activity with their shares; the same one said twice is one. */
export function activityParts(answers: Answers, knowledge: Knowledge): readonly ActivityPart[] {
  const main = partOf('activity', answers, knowledge);
  const second =
    answers['second-activity'] === answers['activity'] ? undefined : partOf('second-activity', answers, knowledge);
  if (!main || !second) return [main ?? second].filter((part) => part !== undefined);
  const share = secondShare(answers['second-share']);
  return [
    { ...main, share: 1 - share },
    { ...second, share },
  ];
}

function partOf(question: string, answers: Answers, knowledge: Knowledge): ActivityPart | undefined {
  const id = answers[question];
  if (id === SOMETHING_ELSE) {
    const shares = answers['else-loads'];
    const described = typeof shares === 'object' && !Array.isArray(shares) ? elseLoads({ ...shares }) : [];
    const loads = described.map(({ load, value, word }) => ({
      load,
      value,
      from: word ? `else-loads:${word}` : 'else-loads',
    }));
    return { share: 1, question, loads };
  }
  const row = knowledge.activities.find((activity) => activity.id === id);
  if (!row) return undefined;
  const loads = LOADS.map((load) => ({ load, value: row.loads[load]?.value ?? 0, from: question }));
  return { share: 1, question, row, loads };
}
