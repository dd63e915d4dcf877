import fc from 'fast-check';
import { expect, test } from 'vitest';
import { questionsOf } from '../../src/flow/route.ts';
import { fromBase64url, toBase64url } from '../../src/visit/base64url.ts';
import { readCardCode, writeCardCode } from '../../src/visit/card-code.ts';
import { crc32 } from '../../src/visit/crc32.ts';
import { HOLDS } from '../../src/visit/visit.ts';
import { anyVisit } from './any-visit.ts';
import { fittingFlow as flow, fittingTables as tables } from './fitting.ts';

/** Of each kind, so many: LACEWING_RUNS says otherwise. */
const numRuns = Number(process.env['LACEWING_RUNS'] ?? 300);
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const health = new Set(questionsOf(flow).flatMap((question) => (question.health ? [question.id] : [])));

const read = (text: string) => readCardCode(text, flow, tables);
const anyCode = fc
  .tuple(anyVisit(flow, tables), fc.constantFrom(...HOLDS), fc.constantFrom(undefined, 'https://kiosk.example'))
  .map(([visit, hold, origin]) => ({ hold, text: writeCardCode(visit, hold, flow, tables, origin) }));

/** Refused with one reason, and nothing of a visit. */
function refused(text: string): void {
  const { value, findings } = read(text);
  expect(value).toBeUndefined();
  expect(findings).toHaveLength(1);
  expect(findings[0]?.code).toMatch(/^code-/);
}

test('any text a camera finds is refused, never thrown at', () => {
  const text = fc.oneof(
    fc.string(),
    fc.string({ unit: 'binary', maxLength: 300 }),
    fc.string({ unit: fc.constantFrom(...LETTERS), maxLength: 300 }).map((letters) => `TAE${letters}`),
    fc.webFragments().map((fragment) => `https://kiosk.example/#c=${fragment}`),
  );
  fc.assert(fc.property(text, refused), { numRuns });
});

/** Bytes after a head as ours, sealed as ours. */
function sealed(content: readonly number[]): string {
  const checked = [0x4c, 1, content.length >> 8, content.length & 255, ...content];
  const check = crc32(checked);
  return toBase64url([...checked, ...[24, 16, 8, 0].map((shift) => (check >>> shift) & 255)]);
}

test('any bytes sealed as a code of ours are refused, or say how careful to be', () => {
  // Up to fourteen bytes are the flow, its version and lists, and the language: what follows is read as answers.
  const bytes = fc.oneof(
    fc.uint8Array({ maxLength: 300 }).map((all) => [...all]),
    fc
      .tuple(anyCode, fc.integer({ min: 8, max: 30 }), fc.uint8Array({ maxLength: 60 }))
      .map(([{ text }, kept, more]) => {
        const content = (fromBase64url(text.slice(text.indexOf('=') + 1)) ?? []).slice(4, -4);
        return [...content.slice(0, kept), ...more];
      }),
    fc.tuple(anyCode, fc.nat()).map(([{ text }, at]) => {
      const content = (fromBase64url(text.slice(text.indexOf('=') + 1)) ?? []).slice(4, -4);
      const bit = at % (content.length * 8);
      return content.map((byte, place) => (place === bit >> 3 ? byte ^ (0x80 >> (bit & 7)) : byte));
    }),
  );
  fc.assert(
    fc.property(bytes, (content) => {
      const { value, findings } = read(sealed(content));
      expect(value === undefined).toBe(findings.length > 0);
      if (!value || value.printHealth) return;
      expect(HOLDS).toContain(value.hold);
      expect(Object.keys(value.answers).filter((id) => health.has(id))).toEqual([]);
    }),
    { numRuns },
  );
});

test('a code cut anywhere is refused', () => {
  fc.assert(
    fc.property(anyCode, fc.nat(), ({ text }, at) => refused(text.slice(0, at % text.length))),
    { numRuns },
  );
});

test('a code with letters changed is refused, or is the one it was', () => {
  const changes = fc.array(fc.tuple(fc.nat(), fc.constantFrom(...LETTERS)), { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(anyCode, changes, ({ text }, all) => {
      const start = text.indexOf('=') + 1;
      const letters = [...text];
      for (const [at, to] of all) letters[start + (at % (letters.length - start))] = to;
      const changed = letters.join('');
      if (changed !== text) refused(changed);
    }),
    { numRuns },
  );
});

test('a sound code gives back its hold, unless the answers that it comes from travel themselves', () => {
  fc.assert(
    fc.property(anyCode, ({ text, hold }) => {
      const { value, findings } = read(text);
      expect(findings).toEqual([]);
      if (value?.hold === undefined) expect(value?.printHealth).toBe(true);
      else {
        expect(value.hold).toBe(hold);
        expect(Object.keys(value.answers).filter((id) => health.has(id))).toEqual([]);
      }
    }),
    { numRuns },
  );
});
