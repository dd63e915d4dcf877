import { crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Answers } from '../../src/flow/answers.ts';
import { questionsOf } from '../../src/flow/route.ts';
import { fromBase64url, toBase64url } from '../../src/visit/base64url.ts';
import { readCardCode, writeCardCode } from '../../src/visit/card-code.ts';
import { crc32 } from '../../src/visit/crc32.ts';
import { effectiveAnswers } from '../../src/visit/effective.ts';
import { HOLDS } from '../../src/visit/visit.ts';
import { anyVisit, visitOf } from './any-visit.ts';
import { toyFlow, toyTables } from './toy-flow.ts';

const read = (code: string) => readCardCode(code, toyFlow, toyTables);
const findingCodes = (code: string) => {
  const { value, findings } = read(code);
  expect(value).toBeUndefined();
  return findings.map(({ code }) => code);
};
const health = new Set(questionsOf(toyFlow).flatMap(({ id, health }) => (health ? [id] : [])));
const withoutHealth = (answers: Answers): Answers =>
  Object.fromEntries(Object.entries(answers).filter(([id]) => !health.has(id)));

/** One full visit on the longest way through the toy flow. */
const full = visitOf(
  toyFlow,
  {
    mood: 'merry',
    activity: 'sliding',
    hours: 'not-sure',
    floors: { ice: 'mostly', felt: 'now-and-then' },
    size: { value: 42.5, unit: 'eu' },
    signs: ['sneezing'],
    body: { nose: { when: 'now', seen: false } },
    liking: { weight: 'lighter', squeak: 'quieter' },
    matters: ['squeak', 'smell'],
  },
  { language: 'de' },
);
const code = writeCardCode(full, 'today', toyFlow, toyTables);

describe("a card's code", () => {
  it('gives back the answers that count, without those about health, and the hold in their place', () => {
    fc.assert(
      fc.property(anyVisit(toyFlow, toyTables), fc.constantFrom(...HOLDS), (visit, hold) => {
        const { value, findings } = read(writeCardCode({ ...visit, printHealth: false }, hold, toyFlow, toyTables));
        expect(findings).toEqual([]);
        expect(value).toEqual(
          visitOf(toyFlow, withoutHealth(effectiveAnswers(visit, toyFlow)), { language: visit.language, hold }),
        );
      }),
    );
  });

  it('carries health answers when the customer said yes to printing them', () => {
    fc.assert(
      fc.property(anyVisit(toyFlow, toyTables), (any) => {
        const { hold: _hold, ...rest } = any;
        const overrides = rest.overrides.filter(({ question }) => question !== 'signs');
        const visit = { ...rest, overrides, printHealth: true };
        const { value } = read(writeCardCode(visit, 'before-choosing', toyFlow, toyTables));
        expect(value?.answers).toEqual(effectiveAnswers(visit, toyFlow));
        expect(value?.hold).toBeUndefined();
        expect(value?.printHealth).toBe(true);
      }),
    );
  });

  it('keeps the hold when the yes came after the health answers were gone', () => {
    const visit = { ...full, hold: 'today' as const, printHealth: true };
    const { value } = read(writeCardCode(visit, 'today', toyFlow, toyTables));
    expect(value?.hold).toBe('today');
    expect(value?.answers).toEqual(withoutHealth(full.answers));
  });

  it('lets the hold speak where the fitter changed a stop sign, so that no tapped sign gets lost', () => {
    const overrides = [{ question: 'signs', value: ['none'], by: 'Fitter', reason: 'misread' }];
    const { value } = read(writeCardCode({ ...full, overrides, printHealth: true }, 'today', toyFlow, toyTables));
    expect(value?.hold).toBe('today');
    expect(value?.answers['signs']).toBeUndefined();
  });

  it('says nothing of health to somebody who reads it without the yes', () => {
    const other = { ...full, answers: { ...full.answers, signs: ['none'], body: 'skipped' } };
    expect(writeCardCode(other, 'today', toyFlow, toyTables)).toBe(code);
  });

  it('writeCardCode: is read alone, in an address, and with space round it', () => {
    const address = writeCardCode(full, 'today', toyFlow, toyTables, 'https://kiosk.example/');
    expect(address).toMatch(/^https:\/\/kiosk\.example\/#c=TAEA/);
    expect(address).toBe(`https://kiosk.example/#c=${code}`);
    expect(read(address)).toEqual(read(code));
    expect(read(` ${code}\n`)).toEqual(read(code));
    expect(read(code).value?.answers).toEqual(withoutHealth(full.answers));
  });

  it('is the same for the same visit, and holds only letters that may stand in an address', () => {
    expect(writeCardCode(structuredClone(full), 'today', toyFlow, toyTables)).toBe(code);
    expect(code).toMatch(/^[A-Za-z0-9_-]+$/);
  });

  it('leaves out an answer the flow does not offer instead of failing', () => {
    const visit = visitOf(toyFlow, { mood: 'grumpy', activity: 'sliding', nobody: 'asked' });
    expect(read(writeCardCode(visit, 'none', toyFlow, toyTables)).value?.answers).toEqual({ activity: 'sliding' });
  });

  it('with any one bit changed is refused', () => {
    const bytes = fromBase64url(code) ?? [];
    for (let at = 0; at < bytes.length * 8; at += 1) {
      const damaged = bytes.map((byte, place) => (place === at >> 3 ? byte ^ (0x80 >> (at & 7)) : byte));
      expect(findingCodes(toBase64url(damaged))).toHaveLength(1);
    }
  });

  it('written anew with any one bit changed never drops its hold without the customer’s yes, nor tells of health', () => {
    const bytes = fromBase64url(code) ?? [];
    const content = bytes.slice(0, -4);
    for (let at = 0; at < content.length * 8; at += 1) {
      const changed = content.map((byte, place) => (place === at >> 3 ? byte ^ (0x80 >> (at & 7)) : byte));
      const check = crc32(changed);
      const tail = [24, 16, 8, 0].map((shift) => (check >>> shift) & 255);
      const visit = read(toBase64url([...changed, ...tail])).value;
      if (visit === undefined || visit.printHealth) continue;
      expect(visit.hold).toBeDefined();
      expect(Object.keys(visit.answers).filter((id) => health.has(id))).toEqual([]);
    }
  });

  it('with any letters changed is refused', () => {
    const letter = fc.constantFrom(...'ABCxyz019-_#. é');
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(code.length - 1), letter), { minLength: 1, maxLength: 5 }), (changes) => {
        const letters = [...code];
        for (const [at, to] of changes) letters[at] = to;
        const changed = letters.join('');
        if (changed.trim() !== code) expect(findingCodes(changed)).toHaveLength(1);
      }),
    );
  });

  it('cut short anywhere is refused, and past its head says so', () => {
    for (let length = 0; length < code.length; length += 1) findingCodes(code.slice(0, length));
    expect(findingCodes(code.slice(0, 20))).toEqual(['code-cut-short']);
    expect(findingCodes(code.slice(0, -2))).toEqual(['code-cut-short']);
  });

  it('with something added is refused', () => {
    expect(findingCodes(`${code}AAAA`)).toEqual(['code-damaged']);
  });

  it('from somebody else is refused as foreign', () => {
    for (const foreign of ['', 'https://shop.example/menu', 'hello', '4006381333931', 'AAAAAAAAAAAA']) {
      expect(findingCodes(foreign)).toEqual(['code-foreign']);
    }
  });

  it('of another flow, flow version or layout of its lists is refused with the reason', () => {
    const from = (flow: typeof toyFlow, tables: typeof toyTables) =>
      findingCodes(writeCardCode({ ...full, flow: flow.id }, 'none', flow, tables));
    expect(from({ ...toyFlow, id: 'other' }, toyTables)).toEqual(['code-other-flow']);
    expect(from({ ...toyFlow, version: 4 }, toyTables)).toEqual(['code-other-version']);
    const moreFloors = { ...toyTables, floors: [{ id: 'glass', group: 'odd' }, ...toyTables.floors] };
    expect(from(toyFlow, moreFloors)).toEqual(['code-other-version']);
    const head = fromBase64url(code) ?? [];
    expect(findingCodes(toBase64url(head.map((byte, at) => (at === 1 ? 2 : byte))))).toEqual(['code-other-format']);
  });

  it('never throws, whatever a camera reads', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.base64String(), fc.webUrl()), (text) => findingCodes(text).length === 1),
    );
  });
});

describe('its parts', () => {
  it('crc32: the check value of "123456789" is cbf43926, and any bytes agree with zlib', () => {
    expect(crc32([0x31, 0x32, 0x33, 0x34, 0x35, 0x36, 0x37, 0x38, 0x39])).toBe(0xcbf43926);
    fc.assert(fc.property(fc.uint8Array(), (bytes) => crc32([...bytes]) === zlibCrc32(bytes)));
  });

  it('toBase64url: as Buffer writes it, and back', () => {
    expect(toBase64url([0xfb, 0xff])).toBe('-_8');
    fc.assert(
      fc.property(fc.uint8Array(), (bytes) => {
        const text = toBase64url([...bytes]);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
        expect(fromBase64url(text)).toEqual([...bytes]);
      }),
    );
    // RFC 4648, section 3.5: left-over bits that are not zero could not have been written so.
    expect(fromBase64url('-_9')).toBeUndefined();
  });
});

it('a book pasted for a card’s code is refused at once', () => {
  expect(findingCodes('TAEA'.repeat(5_000_000))).toEqual(['code-damaged']);
  expect(findingCodes('x'.repeat(20_000_000))).toEqual(['code-foreign']);
});
