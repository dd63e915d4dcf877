import type { Answer } from '../flow/answers.ts';
import type { Flow, Question } from '../flow/format.ts';
import { allOptions, type Tables } from '../flow/options.ts';
import { questionsOf } from '../flow/route.ts';
import { isAnswer } from '../flow/valid-answer.ts';
import type { Finding, Reading } from '../units/result.ts';
import { readAnswer, writeAnswer } from './answer-bits.ts';
import { fromBase64url, toBase64url } from './base64url.ts';
import { BitReader, BitWriter } from './bits.ts';
import { crc32 } from './crc32.ts';
import { effectiveAnswers } from './effective.ts';
import { HOLDS, type Hold, type Visit } from './visit.ts';

/** First byte of every code, whatever its format: tells ours from any other square on a shop's wall. */
const MARK = 0x4c;
/** Raised when the layout below changes. */
const FORMAT = 1;
/** Mark, format, two bytes of length; then the content; then four bytes of check number. */
const HEAD = 4;
const TAIL = 4;
/** In characters: no square holds as much (ISO/IEC 18004 ends at 4,296 letters), so what is longer was pasted by mistake. */
const LONGEST = 5000;
const IN_ADDRESS = '#c=';

/**
 * The text of the code on a card, for a square of level M: what a bench needs to work the visit out again.
 *
 * Format, flow and its version, language, `hold`, and the answers that count, each as its place in the flow's own
 * lists. Answers about health are in it only if the customer said yes to printing them; `hold` always is. The
 * fitter's changes are in the answers; measurements and try-ons are not in it.
 *
 * With an `origin` the text is an address that opens the kiosk; what follows `#` is never sent anywhere.
 *
 * @example
 * ```ts
 * writeCardCode(visit, 'none', flow, tables, 'https://kiosk.example') // 'https://kiosk.example/#c=TAEA…'
 * ```
 */
export function writeCardCode(visit: Visit, hold: Hold, flow: Flow, tables: Tables, origin?: string): string {
  const withHealth = carriesHealth(visit, flow);
  const answers = effectiveAnswers(visit, flow);
  const out = new BitWriter();
  writeText(out, flow.id);
  out.write(flow.version, 20);
  out.write(shapeOf(flow, tables), 16);
  writeText(out, visit.language);
  out.write(HOLDS.indexOf(hold), 3);
  out.flag(withHealth);
  out.flag(visit.printHealth === true);
  for (const question of questionsOf(flow)) {
    const answer = answers[question.id];
    const said = answer !== undefined && (withHealth || !question.health) && isAnswer(question, answer, tables);
    out.flag(said);
    if (said) writeAnswer(out, question, answer, tables);
  }
  const content = out.bytes();
  const checked = [MARK, FORMAT, content.length >> 8, content.length & 255, ...content];
  const code = toBase64url([...checked, ...bytesOf(crc32(checked))]);
  return origin === undefined ? code : `${origin.replace(/\/+$/, '')}/${IN_ADDRESS}${code}`;
}

/**
 * Reads a card's code, alone or in its address, for one flow. A code that is damaged, cut short, not ours, of another
 * format, flow or flow version is refused with the reason; nothing is guessed.
 */
export function readCardCode(code: string, flow: Flow, tables: Tables): Reading<Visit> {
  const bare = code.trim();
  if (bare.length > LONGEST) return refuse(looksOurs(bare) ? 'code-damaged' : 'code-foreign');
  const text = bare.slice(bare.includes(IN_ADDRESS) ? bare.indexOf(IN_ADDRESS) + IN_ADDRESS.length : 0);
  // A code cut in the middle of a byte still tells how long it should have been.
  const bytes = fromBase64url(text) ?? fromBase64url(text.slice(0, text.length - (text.length % 4)));
  if (bytes === undefined || bytes[0] !== MARK) return refuse(looksOurs(bare) ? 'code-damaged' : 'code-foreign');
  if (bytes[1] !== FORMAT) return refuse('code-other-format', { wanted: FORMAT });
  const length = (bytes[2] ?? 0) * 256 + (bytes[3] ?? 0);
  if (bytes.length < HEAD + length + TAIL) return refuse('code-cut-short');
  const checked = bytes.slice(0, HEAD + length);
  const tail = bytes.slice(HEAD + length);
  if (tail.length > TAIL || bytesOf(crc32(checked)).some((byte, at) => byte !== tail[at]))
    return refuse('code-damaged');
  return readContent(new BitReader(checked.slice(HEAD)), flow, tables);
}

function readContent(bits: BitReader, flow: Flow, tables: Tables): Reading<Visit> {
  const id = readText(bits);
  const version = bits.read(20);
  const shape = bits.read(16);
  if (id !== flow.id) return refuse('code-other-flow', { given: id, wanted: flow.id });
  // The same version with other options in a table would read every later answer wrongly.
  if (version !== flow.version || shape !== shapeOf(flow, tables)) {
    return refuse('code-other-version', { given: version, wanted: flow.version });
  }
  const language = readText(bits);
  const hold = HOLDS[bits.read(3)];
  const withHealth = bits.flag();
  const printHealth = bits.flag();
  const answers: Record<string, Answer> = {};
  // Health answers travel only with the customer's yes, and `hold` is dropped only where they do: what says otherwise
  // was written by nobody's kiosk, and would be less careful.
  let sound = hold !== undefined && flow.languages.includes(language) && (printHealth || !withHealth);
  for (const question of questionsOf(flow)) {
    if (!bits.flag()) continue;
    const answer = readAnswer(bits, question, tables);
    if (isAnswer(question, answer, tables) && (withHealth || !question.health)) answers[question.id] = answer;
    else sound = false;
  }
  if (!sound || bits.overrun || !bits.spent) return refuse('code-damaged');
  const visit: Visit = {
    flow: flow.id,
    flowVersion: flow.version,
    language,
    answers,
    overrides: [],
    observation: {},
    tryOns: [],
    ...(!withHealth && hold && { hold }),
    ...(printHealth && { printHealth }),
  };
  return { value: visit, findings: [] };
}

/**
 * Health answers travel with the customer's yes, and only if they are still here to travel. Where the fitter changed a
 * stop sign they stay behind: the code has room for one answer, and a sign somebody tapped must not get lost on the
 * way. `hold` knows of both.
 */
const carriesHealth = (visit: Visit, flow: Flow): boolean =>
  visit.printHealth === true &&
  visit.hold === undefined &&
  !questionsOf(flow).some(
    ({ id, kind }) => kind === 'signs' && visit.overrides.some(({ question }) => question === id),
  );

/**
 * A fingerprint of what the places in the code mean: every question with its kind and options, in order. It tells
 * a flow whose tables have gained a row from the one that wrote the code.
 */
function shapeOf(flow: Flow, tables: Tables): number {
  const shape = JSON.stringify(
    questionsOf(flow).map((question) => [question.id, question.kind, placesOf(question, tables)]),
  );
  return crc32([...shape].map((letter) => letter.charCodeAt(0))) & 0xffff;
}
function placesOf(question: Question, tables: Tables): unknown {
  switch (question.kind) {
    case 'number':
      return question.units.map(({ id }) => id);
    case 'against-today':
      return question.properties.map(({ id, choices }) => [id, choices]);
    case 'body-map':
      return question.regions.map(({ id }) => id);
    default:
      return allOptions(question, tables).map(({ id }) => id);
  }
}

/** Ids and language tags: ASCII, at most 31 characters. */
function writeText(out: BitWriter, text: string): void {
  out.write(text.length, 5);
  for (const letter of text) out.write(letter.charCodeAt(0), 7);
}
const readText = (bits: BitReader): string =>
  Array.from({ length: bits.read(5) }, () => String.fromCharCode(bits.read(7))).join('');

const bytesOf = (number: number): readonly number[] => [24, 16, 8, 0].map((shift) => (number >>> shift) & 255);

/** Text that starts as our codes do but holds letters they never hold. */
const looksOurs = (text: string): boolean =>
  text.includes(IN_ADDRESS) || text.startsWith(toBase64url([MARK, FORMAT, 0]).slice(0, 3));

const refuse = (code: string, data?: Finding['data']): Reading<never> => ({
  findings: [{ code, severity: 'error', ...(data && { data }) }],
});
