import type { Answer, Answers } from '../flow/answers.ts';
import type { Knowledge, Rule } from '../flow/knowledge.ts';
import { routeOf } from '../flow/route.ts';
import { couldHold } from './could-hold.ts';
import { GRADE_CAPS, isLiking } from './grade-caps.ts';
import type { Facts } from './profile.ts';
import { factsForRules } from './roll-counts.ts';
import { isStop } from './stops.ts';

/** Facts that a question decides besides those under its own id. */
const DECIDES: Readonly<Record<string, readonly string[]>> = {
  activity: ['load-', 'floor-', 'toe-room-', 'other-footwear'],
  'second-activity': ['load-', 'toe-room-'],
  'else-loads': ['load-'],
  floors: ['floor-'],
  wet: ['floor-wet'],
  'age-band': ['person-'],
  'now-kind': ['today-'],
  signs: ['health-asked'],
};

/** What an outcome, a must or a stop sign counts beside the weight of needs; other cautions count little. Design choices. */
const WORTH = { outcome: 2, must: 1, stop: 3, caution: 0.2 };

/**
 * Questions in play without a real answer, the one worth asking most first.
 *
 * A question is worth the most that its answer could still change: the capped weight of every rule that would hold on
 * some of its answers and not on others, all else as it is. Ties stay in the flow's order. What somebody would rather
 * not say is not asked again.
 */
export function unknownOf(answers: Answers, facts: Facts, knowledge: Knowledge): readonly string[] {
  const readable = factsForRules(facts);
  return routeOf(knowledge.flow, answers)
    .asked.filter((id) => isOpenAnswer(answers[id]))
    .map((id) => ({ id, worth: worthOf(id, readable, knowledge) }))
    .filter(({ worth }) => worth > 0)
    .sort((a, b) => b.worth - a.worth)
    .map(({ id }) => id);
}

function isOpenAnswer(answer: Answer | undefined): boolean {
  if (answer === undefined || answer === 'not-sure') return true;
  if (typeof answer !== 'object') return false;
  return Array.isArray(answer) ? answer.includes('not-sure') : Object.hasOwn(answer, 'not-sure');
}

function worthOf(question: string, facts: Facts, knowledge: Knowledge): number {
  const decided = Object.hasOwn(DECIDES, question) ? (DECIDES[question] ?? []) : [];
  const isOpen = (key: string): boolean =>
    key === question || key.startsWith(`${question}-`) || decided.some((start) => key.startsWith(start));
  const worth = knowledge.rules.reduce((sum, rule) => sum + ruleWorth(rule, facts, isOpen, knowledge), 0);
  return Number(worth.toFixed(6));
}

function ruleWorth(rule: Rule, facts: Facts, isOpen: (key: string) => boolean, knowledge: Knowledge): number {
  const could = rule.when ? couldHold(rule.when, facts, isOpen) : { hold: true, fail: false };
  if (!could.hold) return 0;
  const cap = isLiking(rule) ? 1 : GRADE_CAPS[rule.grade];
  const asks = rule.asks?.filter((ask) => could.fail || (ask.per !== undefined && isOpen(ask.per))) ?? [];
  const wishes = rule.wishes?.filter(({ per }) => could.fail || (per !== undefined && isOpen(per))) ?? [];
  const weight = [...asks, ...wishes].reduce((sum, ask) => sum + ask.weight * cap, 0);
  if (!could.fail) return weight;
  const cautions = knowledge.cautions.filter((row) => rule.cautions?.includes(row.id));
  const worries = cautions.reduce((sum, { level }) => sum + (isStop(level) ? WORTH.stop : WORTH.caution), 0);
  return weight + worries + (rule.musts?.length ?? 0) * WORTH.must + (rule.outcome ? WORTH.outcome : 0);
}
