import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { centimetres } from '../../src/sizing/systems/centimetres.ts';
import { chineseSize, parseChinese, printChinese } from '../../src/sizing/systems/chinese.ts';
import { EU_RANGE, eu, euInThirds } from '../../src/sizing/systems/eu.ts';
import {
  GIRTH_LETTERS,
  girthLetter,
  japaneseGirth,
  japaneseSize,
  parseJapanese,
  printJapanese,
} from '../../src/sizing/systems/japanese.ts';
import { mondopoint, parseMondopoint, printMondopoint } from '../../src/sizing/systems/mondopoint.ts';
import { readLabel, SYSTEMS } from '../../src/sizing/systems/systems.ts';
import { uk } from '../../src/sizing/systems/uk.ts';
import { ukChild } from '../../src/sizing/systems/uk-child.ts';
import { usChild } from '../../src/sizing/systems/us-child.ts';
import { usMen } from '../../src/sizing/systems/us-men.ts';
import { usWomen } from '../../src/sizing/systems/us-women.ts';
import { LABEL_SYSTEMS } from '../../src/stock/shoe.ts';

const anyFoot = fc.integer({ min: 900, max: 3300 }).map((tenths) => tenths / 10);

describe('laws of every system', () => {
  test.each([...LABEL_SYSTEMS])('a longer foot never gets a smaller size: %s', (id) => {
    fc.assert(
      fc.property(anyFoot, fc.integer({ min: 0, max: 300 }), (foot, more) => {
        const [shorter, longer] = [SYSTEMS[id].size(foot), SYSTEMS[id].size(foot + more / 10)];
        if (shorter !== undefined && longer !== undefined) expect(longer).toBeGreaterThanOrEqual(shorter);
      }),
    );
  });

  test('a longer foot never gets a smaller size: EU thirds, Japan, China', () => {
    fc.assert(
      fc.property(anyFoot, fc.integer({ min: 0, max: 300 }), (foot, more) => {
        const longer = foot + more / 10;
        expect(euInThirds(longer)).toBeGreaterThanOrEqual(euInThirds(foot));
        expect(japaneseSize(longer).length).toBeGreaterThanOrEqual(japaneseSize(foot).length);
        expect(chineseSize(longer).length).toBeGreaterThanOrEqual(chineseSize(foot).length);
      }),
    );
  });

  test('a rounder foot never gets a narrower letter', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 200, max: 300 }),
        fc.integer({ min: 180, max: 300 }),
        fc.nat(20),
        (length, girth, more) => {
          const index = (g: number) => {
            const letter = girthLetter(length, g, 'women');
            return letter === undefined ? undefined : GIRTH_LETTERS.indexOf(letter);
          };
          const [slim, wide] = [index(girth), index(girth + more)];
          if (slim !== undefined && wide !== undefined) expect(wide).toBeGreaterThanOrEqual(slim);
        },
      ),
    );
  });

  test.each([...LABEL_SYSTEMS])('what is printed is read back the same: %s', (id) => {
    fc.assert(
      fc.property(anyFoot, (foot) => {
        const size = SYSTEMS[id].size(foot);
        if (size !== undefined) expect(SYSTEMS[id].parse(SYSTEMS[id].print(size))).toBe(size);
      }),
    );
  });

  test('what is printed is read back the same: EU wholes, halves and thirds', () => {
    const part = fc.constantFrom(0, 2, 3, 4);
    fc.assert(
      fc.property(fc.integer({ min: EU_RANGE[0], max: EU_RANGE[1] - 1 }), part, (whole, sixths) => {
        const size = (whole * 6 + sixths) / 6;
        expect(eu.parse(eu.print(size))).toBe(size);
      }),
    );
  });

  test('what is printed is read back the same: Mondopoint, Japan, China, with their widths', () => {
    const length = fc.integer({ min: 18, max: 70 }).map((n) => n * 5);
    fc.assert(
      fc.property(
        length,
        fc.option(fc.constantFrom(...GIRTH_LETTERS)),
        fc.option(fc.integer({ min: 2, max: 10 })),
        fc.integer({ min: 30, max: 80 }),
        (mm, letter, type, width) => {
          const japanese = letter === null ? { length: mm } : { length: mm, letter };
          expect(parseJapanese(printJapanese(japanese))).toEqual(japanese);
          const chinese = type === null ? { length: mm } : { length: mm, type: type / 2 };
          expect(parseChinese(printChinese(chinese))).toEqual(chinese);
          expect(parseMondopoint(printMondopoint({ length: mm, width }))).toEqual({ length: mm, width });
        },
      ),
    );
  });

  test.each([...LABEL_SYSTEMS])('a foot’s size stands for a foot within half a step: %s', (id) => {
    fc.assert(
      fc.property(anyFoot, (foot) => {
        const size = SYSTEMS[id].size(foot);
        if (size !== undefined) expect(Math.abs(SYSTEMS[id].foot(size) - foot)).toBeLessThanOrEqual(2.5);
      }),
    );
  });

  test('any label at all is read or refused, and never throws', () => {
    fc.assert(
      fc.property(fc.constantFrom(...LABEL_SYSTEMS), fc.string({ unit: 'binary', maxLength: 20 }), (system, text) => {
        const { value, findings } = readLabel(system, text);
        expect((value === undefined) === (findings.length === 1)).toBe(true);
      }),
    );
  });
});

describe('labels as boxes print them', () => {
  test.each([
    ['eu', '42 2/3', 42 + 2 / 3],
    ['eu', '42⅔', 42 + 2 / 3],
    ['eu', 'EU 42,5', 42.5],
    ['eu', 'EUR 42', 42],
    ['eu', '42.7', 42 + 2 / 3],
    ['uk', 'UK 8½', 8.5],
    ['us-men', 'US 9.5', 9.5],
    ['us-women', '11', 11],
    ['uk-child', '13.5', 13.5],
    ['uk-child', 'C10', 10],
    ['us-child', '10.5C', undefined],
    ['mondopoint', '270/103', 270],
    ['mondopoint', '270 mm', 270],
    ['cm', '26,5 cm', 26.5],
    ['eu', '42.1', undefined],
    ['eu', '420', undefined],
    ['uk', '8.25', undefined],
    ['uk', 'EU 42', undefined],
    ['mondopoint', '27', undefined],
    ['mondopoint', '103/270', undefined],
    ['cm', '265', undefined],
    ['eu', '', undefined],
  ] as const)('%s %s', (system, text, size) => {
    const { value, findings } = readLabel(system, text);
    expect(value).toBe(size);
    expect(findings.map((finding) => finding.code)).toEqual(size === undefined ? ['label-not-in-system'] : []);
  });
});

describe('examples', () => {
  test('one of each system', () => {
    expect(eu.size(265)).toBe(42);
    expect(eu.print(42 + 2 / 3)).toBe('42 2/3');
    expect(euInThirds(265)).toBeCloseTo(41 + 2 / 3, 9);
    expect(uk.size(265)).toBe(8.5);
    expect(uk.print(8.5)).toBe('8.5');
    expect(ukChild.size(200)).toBe(13.5);
    expect(ukChild.size(210)).toBeUndefined();
    expect(usMen.size(265)).toBe(9.5);
    expect(usWomen().size(265)).toBe(10.5);
    expect(usWomen(1.5).size(265)).toBe(11);
    expect(usChild.size(150)).toBe(8);
    expect(mondopoint.size(262.4)).toBe(260);
    expect(parseMondopoint('270/103')).toEqual({ length: 270, width: 103 });
    expect(printMondopoint({ length: 270, width: 103 })).toBe('270/103');
    expect(centimetres.parse('26,5 cm')).toBe(26.5);
    expect(centimetres.size(263)).toBe(26.5);
    expect(japaneseGirth(260, 'EEE', 'men')).toBe(261);
    expect(girthLetter(235, 233, 'women')).toBe('E');
    expect(japaneseSize(261, 260, 'men')).toEqual({ length: 260, letter: 'EEE' });
    expect(parseJapanese('25.5 EE')).toEqual({ length: 255, letter: 'EE' });
    expect(printJapanese({ length: 255, letter: 'EE' })).toBe('25.5EE');
    expect(chineseSize(252)).toEqual({ length: 250 });
    expect(parseChinese('25(3)')).toEqual({ length: 250, type: 3 });
    expect(printChinese({ length: 250, type: 3 })).toBe('25(3)');
    expect(readLabel('eu', '42 2/3').value).toBeCloseTo(42.6667, 4);
  });

  test('there is no girth letter without a measured girth', () => {
    expect(japaneseSize(261)).toEqual({ length: 260 });
    expect(japaneseSize(261, 260)).toEqual({ length: 260 });
  });
});
