import type { Finding } from '../units/result.ts';
import { type Answer, BODY_WHEN, BODY_WORDS, SHARES, YES_NO } from './answers.ts';
import type { AgainstToday, BodyMapQuestion, NumberQuestion, Option, Question } from './format.ts';
import { allOptions, type Tables } from './options.ts';

/**
 * What is wrong with a value as the answer to a question; nothing when it will do. The value may be anything that JSON
 * can hold.
 *
 * `offered` narrows the options to those on screen; without it every option the question could ever offer will do.
 */
export function answerFindings(
  question: Question,
  value: unknown,
  tables: Tables,
  offered: readonly Option[] = allOptions(question, tables),
): readonly Finding[] {
  const say = findingsAbout(question);
  switch (question.kind) {
    case 'one-of':
      return oneOf(value, ids(offered), say);
    case 'yes-no':
      return oneOf(value, YES_NO, say);
    case 'some-of':
    case 'signs':
      return someOf(value, offered, question.kind === 'some-of' ? question.most : undefined, say);
    case 'number':
      return number(value, question, say);
    case 'shares':
      return shares(value, offered, say);
    case 'against-today':
      return againstToday(value, question, say);
    case 'body-map':
      return bodyMap(value, question, say);
  }
}

export const isAnswer = (
  question: Question,
  value: unknown,
  tables: Tables,
  offered?: readonly Option[],
): value is Answer => answerFindings(question, value, tables, offered).length === 0;

type Say = (code: string, value: unknown, data?: Finding['data']) => readonly Finding[];

const findingsAbout =
  (question: Question): Say =>
  (code, value, data) => [
    { code, severity: 'error', at: `question ${question.id}`, value: shown(value), ...(data && { data }) },
  ];

const ids = (options: readonly Option[]): readonly string[] => options.map(({ id }) => id);
const list = (words: readonly string[]): Finding['data'] => ({ expected: words.join(', ') });

function oneOf(value: unknown, words: readonly string[], say: Say): readonly Finding[] {
  if (typeof value !== 'string') return say('answer-not-one-word', value, list(words));
  return words.includes(value) ? [] : say('answer-not-offered', value, list(words));
}

function someOf(value: unknown, offered: readonly Option[], most: number | undefined, say: Say): readonly Finding[] {
  if (!Array.isArray(value)) return say('answer-not-a-list', value, list(ids(offered)));
  if (value.length === 0) return say('answer-empty', value);
  if (new Set(value).size < value.length) return say('answer-twice', value);
  const wrong = value.filter((each) => !ids(offered).includes(each));
  if (wrong.length > 0) return wrong.flatMap((each) => say('answer-not-offered', each, list(ids(offered))));
  if (most !== undefined && value.length > most) return say('answer-too-many', value, { most });
  return alone(value, offered, say);
}

function alone(chosen: readonly string[], offered: readonly Option[], say: Say): readonly Finding[] {
  const loner = offered.find((option) => option.alone && chosen.includes(option.id));
  return loner && chosen.length > 1 ? say('answer-not-alone', chosen, { alone: loner.id }) : [];
}

function number(value: unknown, question: NumberQuestion, say: Say): readonly Finding[] {
  if (value === 'not-sure' && question.notSure) return [];
  if (!isMap(value) || !Number.isFinite(value['value']) || value['unit'] === undefined) {
    return say('answer-not-a-quantity', value);
  }
  const unit = question.units.find(({ id }) => id === value['unit']);
  if (!unit) return say('answer-unit-not-offered', value['unit'], list(question.units.map(({ id }) => id)));
  const { from, to } = unit;
  const size = Number(value['value']);
  return size >= from && size <= to ? [] : say('answer-out-of-range', value['value'], { from, to, unit: unit.id });
}

function shares(value: unknown, offered: readonly Option[], say: Say): readonly Finding[] {
  if (!isMap(value)) return say('answer-not-a-map', value, list(ids(offered)));
  const chosen = Object.keys(value);
  if (chosen.length === 0) return say('answer-empty', value);
  const findings = Object.entries(value).flatMap(([id, share]) => {
    const option = offered.find((each) => each.id === id);
    if (!option) return say('answer-not-offered', id, list(ids(offered)));
    return oneOf(share, option.alone ? ['mostly'] : SHARES, say);
  });
  return findings.length > 0 ? findings : alone(chosen, offered, say);
}

function againstToday(value: unknown, question: AgainstToday, say: Say): readonly Finding[] {
  if (!isMap(value)) return say('answer-not-a-map', value, list(question.properties.map(({ id }) => id)));
  return Object.entries(value).flatMap(([id, choice]) => {
    const property = question.properties.find((each) => each.id === id);
    const known = question.properties.map((each) => each.id);
    return property ? oneOf(choice, property.choices, say) : say('answer-not-offered', id, list(known));
  });
}

function bodyMap(value: unknown, question: BodyMapQuestion, say: Say): readonly Finding[] {
  if (typeof value === 'string') return oneOf(value, BODY_WORDS, say);
  if (!isMap(value)) return say('answer-not-a-map', value, list(question.regions.map(({ id }) => id)));
  return Object.entries(value).flatMap(([id, mark]) => {
    const known = question.regions.map((region) => region.id);
    if (!known.includes(id)) return say('answer-not-offered', id, list(known));
    if (!isMap(mark) || typeof mark['seen'] !== 'boolean') return say('answer-not-a-mark', mark);
    return oneOf(mark['when'], BODY_WHEN, say);
  });
}

const isMap = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The value as it stood, short enough to be read in a message. */
const shown = (value: unknown): string => {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value));
  return text.length > 80 ? `${text.slice(0, 79)}…` : text;
};
