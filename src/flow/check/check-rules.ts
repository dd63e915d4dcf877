import { LIST_ATTRIBUTES, MARK_ATTRIBUTES } from '../../attributes/attributes.ts';
import type { Finding } from '../../units/result.ts';
import type { Condition } from '../condition.ts';
import { MUST_LIMITS, type Rule } from '../knowledge.ts';
import type { Tables } from '../options.ts';
import { plainParts, subjectOf } from '../plain-parts.ts';
import { canHold } from './can-hold.ts';
import { checkAsk, perFindings } from './check-ask.ts';
import type { Content, Row } from './content.ts';
import type { JsonPath } from './document.ts';
import { factShapes } from './fact-shapes.ts';
import { findingAt } from './finding-at.ts';
import { misfit, type Shape } from './shape.ts';

/** Rules that read what nobody tells, that can never come true, that do nothing, or that do more than they may. */
export function checkRules({ flow, rows }: Content, tables: Tables): readonly Finding[] {
  if (!flow) return [];
  const facts = factShapes(
    flow,
    tables,
    rows['activities.json'].map(({ row }) => row),
  );
  const known = {
    cautions: new Set(rows['cautions.json'].map(({ row }) => row.id)),
    advice: new Set(rows['advice.json'].map(({ row }) => row.id)),
  };
  return rows['rules.json'].flatMap((each) => {
    const report = reporter(each);
    return [
      ...(each.row.when ? whenFindings(each.row.when, facts, report) : []),
      ...(each.row.asks ?? []).flatMap((ask, i) =>
        checkAsk(ask, facts, (code, further) => report(['asks', i], code, further)),
      ),
      ...mustFindings(each.row, report),
      ...wishFindings(each.row, facts, report),
      ...unknownIds(each.row, 'cautions', 'unknown-caution', known.cautions, report),
      ...unknownIds(each.row, 'advice', 'unknown-advice', known.advice, report),
      ...(doesNothing(each.row) ? report([], 'rule-does-nothing') : []),
    ];
  });
}

type Report = (place: JsonPath, code: string, further?: Pick<Finding, 'value' | 'data'>) => readonly Finding[];

const reporter =
  ({ document, index }: Row<unknown>): Report =>
  (place, code, further) => [findingAt(document, [index, ...place], code, further)];

function whenFindings(when: Condition, facts: ReadonlyMap<string, Shape>, report: Report): readonly Finding[] {
  const wrong = plainParts(when).flatMap((plain) => {
    const shape = facts.get(subjectOf(plain));
    if (!shape) return report(['when'], 'unknown-fact', { value: subjectOf(plain) });
    const found = misfit(plain, shape);
    return found ? report(['when'], found.code, { value: found.value, data: { of: subjectOf(plain) } }) : [];
  });
  if (wrong.length > 0) return wrong;
  return canHold(when, (subject) => facts.get(subject)) ? [] : report(['when'], 'rule-never-true');
}

const DEMANDED: readonly string[] = [...MARK_ATTRIBUTES, ...LIST_ATTRIBUTES, ...MUST_LIMITS];

/** Only a must shuts a shoe out, and what is weak or contested may not. */
function mustFindings({ musts = [], grade }: Rule, report: Report): readonly Finding[] {
  const weak = musts.length > 0 && (grade === 'weak' || grade === 'contested');
  return [
    ...musts.flatMap(({ attribute }, i) =>
      DEMANDED.includes(attribute) ? [] : report(['musts', i, 'attribute'], 'unknown-attribute', { value: attribute }),
    ),
    ...(weak ? report(['musts'], 'weak-must', { value: grade }) : []),
  ];
}

function wishFindings({ wishes = [] }: Rule, facts: ReadonlyMap<string, Shape>, report: Report): readonly Finding[] {
  return wishes.flatMap(({ anyOf, per }, i) => [
    ...anyOf.flatMap(({ attribute }, j) =>
      DEMANDED.includes(attribute)
        ? []
        : report(['wishes', i, 'anyOf', j, 'attribute'], 'unknown-attribute', { value: attribute }),
    ),
    ...(per === undefined
      ? []
      : perFindings(per, facts.get(per), (code, further) => report(['wishes', i, 'per'], code, further))),
  ]);
}

function unknownIds(
  rule: Rule,
  list: 'cautions' | 'advice',
  code: string,
  known: ReadonlySet<string>,
  report: Report,
): readonly Finding[] {
  return (rule[list] ?? []).flatMap((id, i) => (known.has(id) ? [] : report([list, i], code, { value: id })));
}

const doesNothing = ({ asks, musts, wishes, cautions, advice, outcome }: Rule): boolean =>
  outcome === undefined && [asks, musts, wishes, cautions, advice].every((list) => (list ?? []).length === 0);
