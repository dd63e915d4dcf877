import type { Answer, Answers } from '../flow/answers.ts';
import type { Flow } from '../flow/format.ts';
import type { Tables } from '../flow/options.ts';
import { questionsOf } from '../flow/route.ts';
import { answerFindings } from '../flow/valid-answer.ts';
import type { Report } from './fault.ts';
import { readObservation } from './read-observation.ts';
import { group, isGroup, listOf, mapOf, numberIn, oneOf, type Reader, text, truth } from './reader.ts';
import { type Choice, type Clearance, HOLDS, type Override, type TryOn, type Visit } from './visit.ts';

/** A visit as it is written down: what was never filled in is left out. */
export type WrittenVisit = Pick<Visit, 'flow' | 'flowVersion' | 'language' | 'answers'> & Partial<Visit>;

/**
 * Reads a visit that came from outside, for one flow. Every answer that will not do, and every field nobody knows, is
 * reported where it stands; what remains comes back. Nothing comes back for another flow's visit.
 */
export const visitReader =
  (flow: Flow, tables: Tables): Reader<Visit> =>
  (value, path, report) => {
    if (isGroup(value) && typeof value['flow'] === 'string' && value['flow'] !== flow.id) {
      report([...path, 'flow'], { code: 'visit-other-flow', value: value['flow'], data: { wanted: flow.id } });
      return undefined;
    }
    const written = writtenVisit(flow, tables)(value, path, report);
    if (written === undefined) return undefined;
    if (written.flowVersion !== flow.version) {
      const data = { given: written.flowVersion, wanted: flow.version };
      report([...path, 'flowVersion'], { code: 'visit-other-version', data, note: true });
    }
    questionContradictions(written.answers, report);
    return { overrides: [], observation: {}, tryOns: [], ...written };
  };

/** Fields in the order they are read; needed ones are the four that every visit has from its first answer. */
const writtenVisit = (flow: Flow, tables: Tables): Reader<WrittenVisit> =>
  group<WrittenVisit>(
    {
      flow: text,
      flowVersion: numberIn(1, 1e6, true),
      language: oneOf(flow.languages),
      answers: answersReader(flow, tables),
      overrides: listOf(overrideReader(flow, tables)),
      clearance: group<Clearance>({ by: text, reason: text }, ['by', 'reason']),
      observation: readObservation,
      hold: oneOf(HOLDS),
      tryOns: listOf(tryOn),
      choice,
      printHealth: truth,
    },
    ['flow', 'flowVersion', 'language', 'answers'],
  );

const answersReader =
  (flow: Flow, tables: Tables): Reader<Answers> =>
  (value, path, report) => {
    if (!isGroup(value)) {
      report(path, { code: 'field-not-a-group', value });
      return undefined;
    }
    const kept: Record<string, Answer> = {};
    for (const [question, answer] of Object.entries(value)) {
      if (answerWillDo(flow, tables, question, answer, [...path, question], report)) kept[question] = answer;
    }
    return kept;
  };

const overrideReader = (flow: Flow, tables: Tables): Reader<Override> => {
  const parts = group<{ question: string; value: unknown; by: string; reason: string }>(
    { question: text, value: anything, by: text, reason: text },
    ['question', 'value', 'by', 'reason'],
  );
  return (value, path, report) => {
    const read = parts(value, path, report);
    if (read === undefined) return undefined;
    const { question, value: answer, by, reason } = read;
    return answerWillDo(flow, tables, question, answer, path, report)
      ? { question, value: answer, by, reason }
      : undefined;
  };
};

function answerWillDo(
  flow: Flow,
  tables: Tables,
  id: string,
  answer: unknown,
  path: readonly (string | number)[],
  report: Report,
): answer is Answer {
  const question = questionsOf(flow).find((each) => each.id === id);
  if (question === undefined) {
    report(path, { code: 'answer-to-no-question', value: id });
    return false;
  }
  const findings = answerFindings(question, answer, tables);
  for (const { code, value, data } of findings) report(path, { code, value, ...(data && { data }) });
  return findings.length === 0;
}

/** An answer that makes no sense without another that is missing is asked about. */
function questionContradictions(answers: Answers, report: Report): void {
  if (answers['hours'] !== undefined && answers['activity'] === undefined) {
    report(['answers', 'hours'], { code: 'hours-without-activity', note: true });
  }
}

/** `undefined` would read as missing, so nothing is told from something here. */
const anything: Reader<unknown> = (value) => value;

const tryOn = group<TryOn>(
  {
    shoe: text,
    box: text,
    rank: numberIn(1, 1000, true),
    comfort: numberIn(0, 100),
    size: oneOf(['too-small', 'right', 'too-big']),
    notes: mapOf(text),
    rubs: listOf(text),
    note: text,
  },
  ['shoe', 'box', 'notes', 'rubs'],
);

type Pair = Extract<Choice, { kind: 'pair' }>;
type NoPair = Extract<Choice, { kind: 'none' }>;
const pair = group<Pair>({ kind: oneOf(['pair']), shoe: text, box: text, second: text }, ['kind', 'shoe', 'box']);
const noPair = group<NoPair>(
  {
    kind: oneOf(['none']),
    reason: oneOf(['keeps-old', 'other-shop', 'not-in-size', 'price', 'thinks-it-over', 'clinician-first', 'other']),
  },
  ['kind', 'reason'],
);
const choice: Reader<Choice> = (value, path, report) =>
  isGroup(value) && value['kind'] === 'none' ? noPair(value, path, report) : pair(value, path, report);
