import { attribute } from '../attributes/table.ts';
import { factsOf } from '../profile/facts.ts';
import type { Need, Profile } from '../profile/profile.ts';
import { profileOf } from '../profile/profile-of.ts';
import { type Why, whyOf } from '../profile/why.ts';
import type { Words } from '../words/words.ts';
import { loadKnowledge, loadVisit } from './load.ts';
import { FLAG, readOptions } from './options.ts';
import { usage } from './refusal.ts';
import { json, type Said } from './said.ts';

/** `fit profile <answers.json> [--why] [--json]`: what one visit adds up to, with the chain behind each line. */
export function profile(args: readonly string[], words: Words): Said {
  const given = readOptions(args, { why: FLAG, json: FLAG });
  const path = given.files[0];
  if (!path) throw usage('answers-missing');
  const knowledge = loadKnowledge();
  const { visit, findings } = loadVisit(path, knowledge);
  const result = profileOf(factsOf(visit, knowledge), visit, knowledge);
  if (given.flag('json')) return { text: json(asJson(result)), findings };
  const lines = given.flag('why')
    ? whyOf(result, knowledge).flatMap((why) => whyLines(why, words))
    : short(result, words);
  return { text: `${lines.join('\n')}\n`, findings };
}

const asJson = ({
  outcome,
  hold,
  needs,
  musts,
  cautions,
  unknown,
  split,
  advice,
  conflicts,
  otherFootwear,
}: Profile) => ({
  outcome,
  ...(otherFootwear ? { otherFootwear } : {}),
  hold,
  needs: needs.map((need) => ({ ...need, unit: attribute(need.attribute).unit })),
  musts,
  cautions: cautions.map(({ code, level, source, grade }) => ({ code, level, source, grade })),
  advice: advice.map(({ code, kind }) => ({ code, kind })),
  conflicts,
  ...(split ? { split } : {}),
  unknown,
});

const range = (need: Pick<Need, 'ideal'>): string => `${need.ideal[0]}–${need.ideal[1]}`;

function short({ outcome, hold, needs, musts, cautions, advice, unknown }: Profile, words: Words): readonly string[] {
  return [
    `outcome ${outcome}, hold ${hold}`,
    ...musts.map(({ attribute: name, value }) => `must ${name} ${value}`),
    ...needs.map(
      (need) =>
        `need ${words.say(`attribute.${need.attribute}.name`)} ${range(need)} ${attribute(need.attribute).unit}, importance ${need.importance}`,
    ),
    ...cautions.map(({ code, level }) => `caution ${level} ${code}`),
    ...advice.map(({ code }) => `first try ${code}`),
    ...(unknown.length > 0 ? [`worth asking ${unknown.join(', ')}`] : []),
  ];
}

function whyLines({ kind, about, need, value, links }: Why, words: Words): readonly string[] {
  const what = need ? ` ${range(need)}, importance ${need.importance}` : value === undefined ? '' : ` ${value}`;
  return [
    `${kind} ${about}${what}`,
    ...links.map(({ from, rule, source, grade, known, said }) => {
      const why = words.has(`rule.${rule}.why`) ? words.say(`rule.${rule}.why`) : '';
      return `  from ${from}${said === undefined ? '' : ` (${said})`} by ${rule} [${grade}, ${source}${known ? `, ${known}` : ''}] ${why}`;
    }),
  ];
}
