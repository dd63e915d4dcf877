import { type Answer, BODY_WHEN, BODY_WORDS, type BodyMap, type Quantity, SHARES, YES_NO } from '../flow/answers.ts';
import type { AgainstToday, BodyMapQuestion, NumberQuestion, Question } from '../flow/format.ts';
import { allOptions, type Tables } from '../flow/options.ts';
import { type BitReader, type BitWriter, widthOf } from './bits.ts';

/** Writes one valid answer as places in the question's own lists. */
export function writeAnswer(out: BitWriter, question: Question, answer: Answer, tables: Tables): void {
  switch (question.kind) {
    case 'one-of':
      writeWord(out, idsOf(question, tables), answer);
      break;
    case 'yes-no':
      writeWord(out, YES_NO, answer);
      break;
    case 'some-of':
    case 'signs':
      for (const id of idsOf(question, tables)) out.flag((answer as readonly string[]).includes(id));
      break;
    case 'number':
      writeNumber(out, question, answer as 'not-sure' | Quantity);
      break;
    case 'shares':
      writeMap(out, idsOf(question, tables), () => SHARES, answer as Record<string, string>);
      break;
    case 'against-today':
      writeMap(out, propertyIds(question), choicesOf(question), answer as Record<string, string>);
      break;
    case 'body-map':
      out.flag(typeof answer === 'string');
      if (typeof answer === 'string') writeWord(out, BODY_WORDS, answer);
      else writeMarks(out, question, answer as BodyMap);
  }
}

/** Reads it back. What comes may be no valid answer if the bits were made up: the caller checks. */
export function readAnswer(bits: BitReader, question: Question, tables: Tables): unknown {
  switch (question.kind) {
    case 'one-of':
      return readWord(bits, idsOf(question, tables));
    case 'yes-no':
      return readWord(bits, YES_NO);
    case 'some-of':
    case 'signs':
      return idsOf(question, tables).filter(() => bits.flag());
    case 'number':
      return readNumber(bits, question);
    case 'shares':
      return readMap(bits, idsOf(question, tables), () => SHARES);
    case 'against-today':
      return readMap(bits, propertyIds(question), choicesOf(question));
    case 'body-map':
      return bits.flag() ? readWord(bits, BODY_WORDS) : readMarks(bits, question);
  }
}

function writeWord(out: BitWriter, words: readonly string[], word: unknown): void {
  out.write(words.indexOf(word as string), widthOf(words.length));
}

const readWord = (bits: BitReader, words: readonly string[]): string | undefined =>
  words[bits.read(widthOf(words.length))];

/** A map's keys in order, each with a flag for whether it is there and a place in its own list of words. */
function writeMap(
  out: BitWriter,
  keys: readonly string[],
  wordsOf: (key: string) => readonly string[],
  map: Readonly<Record<string, string>>,
): void {
  for (const key of keys) {
    const word = map[key];
    out.flag(word !== undefined);
    if (word !== undefined) writeWord(out, wordsOf(key), word);
  }
}

function readMap(
  bits: BitReader,
  keys: readonly string[],
  wordsOf: (key: string) => readonly string[],
): Readonly<Record<string, string | undefined>> {
  const map: Record<string, string | undefined> = {};
  for (const key of keys) if (bits.flag()) map[key] = readWord(bits, wordsOf(key));
  return map;
}

function writeMarks(out: BitWriter, { regions }: BodyMapQuestion, marks: BodyMap): void {
  for (const { id } of regions) {
    const mark = marks[id];
    out.flag(mark !== undefined);
    if (mark === undefined) continue;
    writeWord(out, BODY_WHEN, mark.when);
    out.flag(mark.seen);
  }
}

function readMarks(bits: BitReader, { regions }: BodyMapQuestion): Readonly<Record<string, unknown>> {
  const marks: Record<string, unknown> = {};
  for (const { id } of regions) if (bits.flag()) marks[id] = { when: readWord(bits, BODY_WHEN), seen: bits.flag() };
  return marks;
}

/** Sizes and millimetres mostly have two decimals at most: so many hundredths fit in these bits (up to 655.35). */
const HUNDREDTHS_WIDTH = 16;

function writeNumber(out: BitWriter, { units }: NumberQuestion, answer: 'not-sure' | Quantity): void {
  out.flag(answer === 'not-sure');
  if (answer === 'not-sure') return;
  writeWord(
    out,
    units.map(({ id }) => id),
    answer.unit,
  );
  const hundredths = Math.round(answer.value * 100);
  const short = hundredths >= 0 && hundredths < 2 ** HUNDREDTHS_WIDTH && hundredths / 100 === answer.value;
  out.flag(short);
  if (short) {
    out.write(hundredths, HUNDREDTHS_WIDTH);
    return;
  }
  // Thirds (42 2/3) need all their digits.
  const exact = new DataView(new ArrayBuffer(8));
  exact.setFloat64(0, answer.value);
  out.write(exact.getUint32(0), 32);
  out.write(exact.getUint32(4), 32);
}

function readNumber(bits: BitReader, { units }: NumberQuestion): unknown {
  if (bits.flag()) return 'not-sure';
  const unit = readWord(
    bits,
    units.map(({ id }) => id),
  );
  if (bits.flag()) return { value: bits.read(HUNDREDTHS_WIDTH) / 100, unit };
  const exact = new DataView(new ArrayBuffer(8));
  exact.setUint32(0, bits.read(32));
  exact.setUint32(4, bits.read(32));
  return { value: exact.getFloat64(0), unit };
}

const idsOf = (question: Question, tables: Tables): readonly string[] =>
  allOptions(question, tables).map(({ id }) => id);
const propertyIds = ({ properties }: AgainstToday): readonly string[] => properties.map(({ id }) => id);
const choicesOf =
  ({ properties }: AgainstToday) =>
  (property: string): readonly string[] =>
    properties.find(({ id }) => id === property)?.choices ?? [];
