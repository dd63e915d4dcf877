import { spelledOptions } from '../flow/options.ts';
import { questionsOf } from '../flow/route.ts';
import { type SizeReport, sizeOf } from '../sizing/size-of.ts';
import type { Finding } from '../units/result.ts';
import type { Words } from '../words/words.ts';
import { loadKnowledge } from './load.ts';
import { FLAG, readOptions, TEXT } from './options.ts';
import { Refusal, usage } from './refusal.ts';
import { json, type Said } from './said.ts';
import { sayFinding } from './say-findings.ts';

const SHELVES = ['men', 'women', 'junior', 'any'] as const;

/**
 * `fit size --left 262 --right 265 [--ball …] [--girth …] [--shelf …] [--activity …] [--checked] [--json]`: what to
 * fetch, and why. `--checked` says that feet far apart were measured again and are so.
 */
export function size(args: readonly string[], words: Words): Said {
  const options = ['left', 'right', 'ball', 'girth', 'width', 'shelf', 'activity', 'age'];
  const texts = Object.fromEntries(options.map((name) => [name, TEXT]));
  const given = readOptions(args, { ...texts, checked: FLAG, json: FLAG }, 0);
  const left = given.number('left');
  const right = given.number('right');
  if (left === undefined && right === undefined) throw usage('option-missing', '--left or --right');
  const shelf = SHELVES.find((each) => each === given.text('shelf'));
  if (given.text('shelf') !== undefined && !shelf) throw usage('shelf-unknown', given.text('shelf'));
  const activity = activityOf(given.text('activity'));
  const age = ageOf(given.text('age'));
  const report = sizeOf(left, right, {
    ball: given.number('ball'),
    girth: given.number('girth'),
    width: given.number('width'),
    ...(given.flag('checked') ? { checked: true } : {}),
    ...(shelf ? { shelf } : {}),
    ...(age ? { ageBand: age } : {}),
    ...(activity ? { activityRoom: activity.toeRoom.range } : {}),
  } as Parameters<typeof sizeOf>[2]);
  if (report.findings.some(isError)) throw new Refusal(refusalOf(report.findings));
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
    ...widthLines(report, words),
    ...(report.also ?? []).map(
      ({ system, label, why }) =>
        `${words.say('size.also.say', { system: words.say(`unit.${system}`), label })} (${words.say(`size.also.${why}`)})`,
    ),
    ...findings.filter(({ code }) => code !== 'feet-far-apart').map((finding) => sayFinding(finding, words)),
  ];
  return { text: `${lines.join('\n')}\n`, findings: [] };
}

function activityOf(wanted: string | undefined) {
  const activity = wanted === undefined ? undefined : loadKnowledge().activities.find(({ id }) => id === wanted);
  if (wanted !== undefined && !activity) throw usage('activity-unknown', wanted);
  return activity;
}

/** One of the ages that the interview offers: a slip would leave a child without room to grow. */
function ageOf(wanted: string | undefined): string | undefined {
  if (wanted === undefined) return undefined;
  const question = questionsOf(loadKnowledge().flow).find(({ id }) => id === 'age-band');
  const ages = (question ? spelledOptions(question) : []).map(({ id }) => id);
  if (!ages.includes(wanted)) throw usage('age-unknown', wanted, { expected: ages.join(', ') });
  return wanted;
}

const isError = ({ severity }: Finding): boolean => severity === 'error';

/** Only what refused it, since "not measured yet" misleads somebody who did; feet far apart with the way on. */
const refusalOf = (findings: readonly Finding[]): readonly Finding[] =>
  findings
    .filter(isError)
    .flatMap((finding) =>
      finding.code === 'feet-far-apart'
        ? [finding, { code: 'feet-checked-option', severity: 'note' as const, value: '--checked' }]
        : [finding],
    );

function widthLines({ width }: SizeReport, words: Words): readonly string[] {
  if (width === undefined) return [];
  const z = words.say(`measure.size.z-${width.by}`, { z: words.number(Math.round(width.z * 100) / 100) });
  const letter = width.letter === undefined ? '' : ` · ${words.say('measure.size.letter')} ${width.letter}`;
  return [`${words.say('measure.size.width')}: ${words.say(`size.width.${width.word}`)} (${z})${letter}`];
}
