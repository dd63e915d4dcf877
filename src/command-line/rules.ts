import type { Backing, Knowledge, Rule } from '../flow/knowledge.ts';
import type { Words } from '../words/words.ts';
import { loadKnowledge } from './load.ts';
import { FLAG, readOptions } from './options.ts';
import { json, type Said } from './said.ts';

/** From what binds most to what binds least, as the caps on weights run. */
const GRADES = ['strong', 'moderate', 'common-practice', 'weak', 'contested'] as const;
const COMMON = 'common-practice';

/**
 * `fit rules [flow folder] [--json]`: on what the kiosk's knowledge rests. How many rules, cautions, pieces of advice
 * and figures have each grade, and every rule that rests on common practice or memory alone, with its reason.
 */
export function rules(args: readonly string[], words: Words): Said {
  const given = readOptions(args, { json: FLAG });
  const knowledge = loadKnowledge(given.files[0]);
  const counts = Object.entries(claimsOf(knowledge)).map(([kind, claims]) => ({ kind, ...countsOf(claims) }));
  const unpublished = knowledge.rules.filter(isUnpublished);
  if (given.flag('json')) {
    const told = unpublished.map(({ id, basis, source, grade, known }) => ({ id, basis, source, grade, known }));
    return { text: json({ counts, unpublished: told }), findings: [] };
  }
  const lines = [
    ...counts.map(({ kind, all, ...count }) => `${kind} ${all}: ${listed(count)}`),
    '',
    `${unpublished.length} of ${knowledge.rules.length} rules rest on common practice or memory:`,
    ...unpublished.map((rule) => lineOf(rule, words)),
  ];
  return { text: `${lines.join('\n')}\n`, findings: [] };
}

const isUnpublished = ({ source, known }: Backing): boolean => source === COMMON || known === 'memory';

/** Everything that must say on what it rests, by kind. */
function claimsOf({ rules: all, cautions, advice, activities, floors, shoeKinds }: Knowledge) {
  return {
    rules: all,
    cautions,
    advice,
    'figures of activities': activities.flatMap(({ loads, toeRoom, met }) => [
      ...Object.values(loads),
      toeRoom,
      ...(met ? [met] : []),
    ]),
    'figures of floors': floors.flatMap(({ hardness, grip, lugs, roughness }) => [hardness, grip, lugs, roughness]),
    'kinds of shoe': shoeKinds,
  } satisfies Readonly<Record<string, readonly Backing[]>>;
}

function countsOf(claims: readonly Backing[]) {
  const count = (is: (claim: Backing) => boolean) => claims.filter(is).length;
  return {
    all: claims.length,
    ...Object.fromEntries(GRADES.map((grade) => [grade, count((claim) => claim.grade === grade)])),
    unpublished: count(isUnpublished),
  };
}

const listed = (count: Readonly<Record<string, number>>): string =>
  Object.entries(count)
    .map(([name, number]) => `${number} ${name}`)
    .join(', ');

function lineOf({ id, basis, grade, known }: Rule, words: Words): string {
  const memory = known === 'memory' ? ', from memory' : '';
  return `  ${basis.padEnd(11)} ${id.padEnd(30)} [${grade}${memory}] ${words.say(`rule.${id}.why`)}`;
}
