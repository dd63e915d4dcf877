import type { Answer, Answers } from '../flow/answers.ts';
import type { Visit } from '../visit/visit.ts';
import type { Told } from './told.ts';

const DECLINED: readonly string[] = ['rather-not-say', 'no-grown-up', 'skipped'];

/** Whether health was asked about, a clinician's clearance, and the one word that travelled without its answers. */
export function factsOfHealth(answers: Answers, visit: Visit): readonly Told[] {
  const cleared = Boolean(visit.clearance?.by.trim() && visit.clearance.reason.trim());
  return [
    healthAsked(answers),
    { key: 'cleared', value: cleared },
    ...(visit.hold === undefined ? [] : [{ key: 'hold-carried', value: visit.hold }]),
  ];
}

function healthAsked(answers: Answers): Told {
  const key = 'health-asked';
  const declined = ['signs', 'conditions'].find((id) => isDeclined(answers[id]));
  if (declined) return { key, value: 'skipped', from: declined };
  return answers['signs'] === undefined ? { key, value: 'not-reached' } : { key, value: 'asked', from: 'signs' };
}

function isDeclined(answer: Answer | undefined): boolean {
  if (typeof answer === 'string') return DECLINED.includes(answer);
  return Array.isArray(answer) && answer.some((each) => DECLINED.includes(each));
}
