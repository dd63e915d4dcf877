import type { Answer, Answers } from '../flow/answers.ts';
import type { Flow, Place } from '../flow/format.ts';
import type { Tables } from '../flow/options.ts';
import { firstUnanswered, inPlay, questionsOf } from '../flow/route.ts';
import { answerFindings } from '../flow/valid-answer.ts';
import type { Finding, Reading } from '../units/result.ts';
import { FRESH, type InterviewState } from './interview-state.ts';

/** Raised when the shape of the saved record changes. */
export const SAVED_FORMAT = 1;

/** An interview as it is kept between one answer and the next. Never the machine's own snapshot: that breaks when a state is renamed. */
export interface SavedInterview {
  readonly flow: string;
  readonly flowVersion: number;
  readonly format: number;
  readonly answers: Answers;
  readonly place: Place;
  readonly changing: boolean;
}

export const savedInterview = (flow: Flow, { answers, at, changing }: InterviewState): SavedInterview => ({
  flow: flow.id,
  flowVersion: flow.version,
  format: SAVED_FORMAT,
  answers,
  place: at,
  changing,
});

/**
 * Reads a saved record back, whatever became of it or of the flow since: the one place where that is put right.
 *
 * Keeps every answer that still fits its question, whole or not at all, and says what it dropped. A record of another
 * flow or format, or one that is no record, gives no value: the interview starts afresh.
 */
export function restoredInterview(flow: Flow, tables: Tables, record: unknown): Reading<InterviewState> {
  const refused = refusal(flow, record);
  if (refused) return { findings: [refused] };
  const saved = record as Partial<Record<keyof SavedInterview, unknown>>;
  const { answers, dropped } = fitting(flow, tables, saved.answers as Readonly<Record<string, unknown>>);
  const { state, moved } = placed(flow, answers, saved.place, saved.changing === true);
  return { value: state, findings: [...dropped, ...moved] };
}

function refusal(flow: Flow, record: unknown): Finding | undefined {
  if (!isMap(record) || !isMap(record['answers'])) return { code: 'saved-unreadable', severity: 'error' };
  if (record['format'] !== SAVED_FORMAT) {
    return { code: 'saved-other-format', severity: 'error', value: shown(record['format']) };
  }
  return record['flow'] === flow.id
    ? undefined
    : { code: 'saved-other-flow', severity: 'error', value: shown(record['flow']), data: { expected: flow.id } };
}

function fitting(flow: Flow, tables: Tables, saved: Readonly<Record<string, unknown>>) {
  const questions = new Map(questionsOf(flow).map((question) => [question.id, question]));
  const answers: Record<string, Answer> = {};
  const dropped: Finding[] = [];
  for (const [id, value] of Object.entries(saved)) {
    const question = questions.get(id);
    if (!question) dropped.push({ code: 'saved-question-gone', severity: 'note', at: `question ${id}`, value: id });
    else if (answerFindings(question, value, tables).length > 0) {
      dropped.push({ code: 'saved-answer-dropped', severity: 'note', at: `question ${id}`, value: id });
    } else answers[id] = value as Answer;
  }
  return { answers, dropped };
}

function placed(flow: Flow, answers: Answers, place: unknown, changing: boolean) {
  const open = firstUnanswered(flow, answers);
  const known = place === 'welcome' || place === 'review' || inPlay(flow, answers).some((id) => id === place);
  if (known && (place !== 'review' || open === undefined)) {
    const at = place as Place;
    return { state: { answers, at, changing: changing && at !== 'review' && at !== 'welcome' }, moved: [] };
  }
  const moved: Finding = { code: 'saved-place-moved', severity: 'note', value: shown(place) };
  const state = {
    ...FRESH,
    answers,
    at: open ?? 'review',
    changing: open !== undefined && (changing || place === 'review'),
  };
  return { state, moved: [moved] };
}

/** What a damaged record holds need not know how to be text. */
const shown = (value: unknown): string => (typeof value === 'string' ? value : (JSON.stringify(value) ?? ''));

const isMap = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
