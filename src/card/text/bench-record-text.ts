import { FOOT_MEASURES } from '../../observation/observation.ts';
import { FIT_NOTES } from '../../visit/fit-notes.ts';
import type { Words } from '../../words/words.ts';
import type { BenchChange, BenchDecision, BenchRecord, BenchTried, CardBox } from '../card.ts';
import { answerText } from './answer-text.ts';
import { boxText } from './box-text.ts';
import type { BenchRecordText, TableText } from './card-text.ts';
import { keptReason } from './kept-reason.ts';

/** The record of the bench in words. What was not recorded has neither rows nor items. */
export function benchRecordText(record: BenchRecord, words: Words): BenchRecordText {
  return {
    decision: {
      heading: words.say('card.bench.decision.heading'),
      items: record.decision ? decisionText(record.decision, words) : [],
    },
    tried: triedText(record.tried, words),
    feet: feetText(record.feet, words),
    changes: {
      heading: words.say('card.bench.changes.heading'),
      items: record.changes.map((change) => changeText(change, words)),
    },
    ...(record.clearance ? { cleared: words.say('bench.clearance.given', { ...record.clearance }) } : {}),
  };
}

function decisionText(decision: BenchDecision, words: Words): readonly string[] {
  const say = (key: string, data: Readonly<Record<string, string>>) => words.say(`card.bench.decision.${key}`, data);
  if (decision.kind === 'none') {
    return [say('none', { reason: words.say(`lacks.no-sale.${decision.reason}`) })];
  }
  const { name, box, second } = decision;
  return [
    say('pair', { name, box: boxNamed(box, words) }),
    ...(second === undefined ? [] : [say('second', { name: second })]),
  ];
}

/** Not where the box stood: it stands there no more. */
const boxNamed = (box: CardBox | string, words: Words): string => (typeof box === 'string' ? box : boxText(box, words));

/** A column for each box tried, and a row for whatever was noted of any of them. */
function triedText(tried: readonly BenchTried[], words: Words): TableText {
  const notes = [
    ...Object.keys(FIT_NOTES),
    ...new Set(tried.flatMap((each) => Object.keys(each.notes).filter(isTask))),
  ];
  const rows: readonly (readonly [string, (each: BenchTried) => string])[] = [
    [words.say('try-on.box'), ({ box }) => boxNamed(box, words)],
    [words.say('card.bench.tried.order'), ({ rank }) => (rank === undefined ? '' : words.number(rank))],
    [words.say('try-on.size.name'), ({ size }) => (size ? words.say(`try-on.size.${size}`) : '')],
    ...notes.flatMap((key) => {
      const name = isTask(key) ? `task.${key.slice(TASK.length)}.name` : `try-on.note.${key}.name`;
      const group = isTask(key) ? 'task' : `note.${key}`;
      if (!words.has(name)) return [];
      const felt = ({ notes: { [key]: value } }: BenchTried) => (value ? words.say(`try-on.${group}.${value}`) : '');
      return [[words.say(name), felt] as const];
    }),
    [words.say('try-on.rubs'), ({ rubs }) => rubs.map((spot) => rubText(spot, words)).join(' · ')],
    [words.say('try-on.comfort.name'), ({ comfort }) => (comfort === undefined ? '' : words.number(comfort))],
    [words.say('try-on.free-note'), ({ note }) => note ?? ''],
  ];
  return {
    heading: words.say('card.bench.tried.heading'),
    columns: tried.map(({ name }) => name),
    rows: rows
      .map(([name, cell]) => ({ name, cells: tried.map(cell) }))
      .filter(({ cells }) => cells.some((cell) => cell !== '')),
    notes: [],
  };
}

const TASK = 'task-';
const isTask = (key: string): boolean => key.startsWith(TASK);

function rubText(spot: string, words: Words): string {
  const [side = '', ...where] = spot.split('-');
  return `${words.say(`card.size.${side}`)}: ${words.say(`try-on.spot.${where.join('-')}`)}`;
}

/** A row for each measure taken of either foot, and how they were taken. */
function feetText(feet: BenchRecord['feet'], words: Words): TableText {
  const sides = (['left', 'right'] as const).filter((side) => feet?.[side]);
  const write = (value: number | undefined): string =>
    value === undefined
      ? ''
      : words.say('card.size.mm', { value: words.number(value, Number.isInteger(value) ? 0 : 1) });
  return {
    heading: words.say('card.bench.feet'),
    columns: sides.map((side) => words.say(`card.size.${side}`)),
    rows: FOOT_MEASURES.map((measure) => ({
      name: words.say(`observation.measure.${measure}`),
      cells: sides.map((side) => write(feet?.[side]?.[measure])),
    })).filter(({ cells }) => cells.some((cell) => cell !== '')),
    notes: feet
      ? [
          (['posture', 'sock', 'time'] as const)
            .flatMap((key) => (feet[key] ? [words.say(`observation.${key}.${feet[key]}`)] : []))
            .join(' · '),
          ...(feet.checked ? [words.say('measure.feet.checked')] : []),
        ]
      : [],
  };
}

function changeText({ question, said, keptPrivate, changes }: BenchChange, words: Words) {
  const say = (key: string, data?: Readonly<Record<string, string>>) => words.say(`card.bench.changes.${key}`, data);
  return {
    ask: words.say(`question.${question.id}.ask`),
    said: [
      said === undefined
        ? say(keptPrivate ? 'kept-private' : 'not-said')
        : say('said', { answer: answerText(question, said, words) }),
      ...changes.map(({ value, by, reason }) => {
        const why = keptReason(reason, words);
        return say('now', {
          answer: answerText(question, value, words),
          why: by ? say('by', { by, reason: why }) : why,
        });
      }),
    ].join(' '),
  };
}
