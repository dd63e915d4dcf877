import { CAUTION_LEVELS, type Knowledge } from '../flow/knowledge.ts';
import type { Fired } from './fire.ts';
import { healthQuestions, questionOf } from './from.ts';
import { mergeReasons } from './merge-reasons.ts';
import type { Advice, Caution, Reason } from './profile.ts';
import { byText } from './told.ts';

/**
 * What to be careful about, the most urgent first: what the fired rules name, and what everybody is told.
 *
 * What follows from a health answer is marked as health even where its row is not, so that no card prints it unasked.
 */
export function cautionsOf(fired: readonly Fired[], cleared: boolean, knowledge: Knowledge): readonly Caution[] {
  const health = healthQuestions(knowledge.flow);
  return knowledge.cautions
    .flatMap((row): Caution[] => {
      const { causes, reasons } = causesOf(fired, (each) => each.rule.cautions?.includes(row.id) === true);
      if (causes.length === 0 && !row.always) return [];
      return [
        {
          code: row.id,
          level: row.level,
          health: row.health === true || (!row.always && anyFrom(health, reasons)),
          ...(row.whom === undefined ? {} : { whom: row.whom }),
          source: row.source,
          grade: row.grade,
          ...(cleared && row.level === 'before-choosing' ? { cleared: true as const } : {}),
          reasons,
        },
      ];
    })
    .sort((a, b) => CAUTION_LEVELS.indexOf(a.level) - CAUTION_LEVELS.indexOf(b.level) || byText(a.code, b.code));
}

/** What to try before, or beside, another shoe, by id. */
export function adviceOf(fired: readonly Fired[], knowledge: Knowledge): readonly Advice[] {
  const healthIds = healthQuestions(knowledge.flow);
  return knowledge.advice
    .flatMap((row): Advice[] => {
      const { causes, reasons } = causesOf(fired, (each) => each.rule.advice?.includes(row.id) === true);
      const health = row.health === true || anyFrom(healthIds, reasons);
      return causes.length === 0 ? [] : [{ code: row.id, kind: row.kind, health, reasons }];
    })
    .sort((a, b) => byText(a.code, b.code));
}

function causesOf(fired: readonly Fired[], names: (each: Fired) => boolean) {
  const causes = fired.filter(names);
  return { causes, reasons: mergeReasons(causes.map(({ reason }) => reason())) };
}

const anyFrom = (questions: ReadonlySet<string>, reasons: readonly Reason[]): boolean =>
  reasons.some(({ from }) => questions.has(questionOf(from)));
