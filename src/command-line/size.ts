import { sizeOf } from '../sizing/size-of.ts';
import type { Words } from '../words/words.ts';
import { loadKnowledge } from './load.ts';
import { FLAG, readOptions, TEXT } from './options.ts';
import { Refusal, usage } from './refusal.ts';
import { json, type Said } from './said.ts';
import { sayFinding } from './say-findings.ts';

const SHELVES = ['men', 'women', 'junior', 'any'] as const;

/** `fit size --left 262 --right 265 [--ball …] [--girth …] [--shelf …] [--activity …] [--json]`: what to fetch, and why. */
export function size(args: readonly string[], words: Words): Said {
  const options = ['left', 'right', 'ball', 'girth', 'width', 'shelf', 'activity', 'age'];
  const given = readOptions(args, { ...Object.fromEntries(options.map((name) => [name, TEXT])), json: FLAG });
  const left = given.number('left');
  const right = given.number('right');
  if (left === undefined && right === undefined) throw usage('option-missing', '--left or --right');
  const shelf = SHELVES.find((each) => each === given.text('shelf'));
  if (given.text('shelf') !== undefined && !shelf) throw usage('shelf-unknown', given.text('shelf'));
  const wanted = given.text('activity');
  const activity = wanted === undefined ? undefined : loadKnowledge().activities.find(({ id }) => id === wanted);
  if (wanted !== undefined && !activity) throw usage('activity-unknown', wanted);
  const report = sizeOf(left, right, {
    ball: given.number('ball'),
    girth: given.number('girth'),
    width: given.number('width'),
    ...(shelf ? { shelf } : {}),
    ...(given.text('age') ? { ageBand: given.text('age') } : {}),
    ...(activity ? { activityRoom: activity.toeRoom.range } : {}),
  } as Parameters<typeof sizeOf>[2]);
  if (report.findings.some(({ severity }) => severity === 'error')) throw new Refusal(report.findings);
  if (given.flag('json')) return { text: json(report), findings: [] };
  const { footLength, doubt, toeRoom, innerLength, findings } = report;
  const lines = [
    `${words.say('card.size.foot')}: ${words.say('card.size.doubt', { value: footLength ?? 0, doubt })}`,
    `${words.say('card.size.room')}: ${words.say('card.size.range', { from: toeRoom[0], to: toeRoom[1] })}`,
    ...(innerLength
      ? [
          `${words.say('card.size.inner')}: ${words.say('card.size.range', { from: innerLength[0], to: innerLength[1] })}`,
        ]
      : []),
    `Mondopoint ${report.mondopoint} · ${words.say('card.size.label-line', {
      eu: report.eu ?? '',
      uk: report.uk ?? '',
      usMen: report.usMen ?? '',
      usWomen: report.usWomen ?? '',
    })}`,
    ...findings.map((finding) => sayFinding(finding, words)),
  ];
  return { text: `${lines.join('\n')}\n`, findings: [] };
}
