import { describe, expect, test } from 'vitest';
import { chineseSize, parseChinese } from '../../src/sizing/systems/chinese.ts';
import {
  GIRTH_LETTERS,
  girthLetter,
  japaneseGirth,
  parseJapanese,
  printJapanese,
} from '../../src/sizing/systems/japanese.ts';

describe('JIS S 5037 girths and letters, as reprinted on Japanese pages that agree with one another', () => {
  // Read. The sources print the girth of a length and letter.
  test.each([
    ['men', 250, 243, 'E'],
    ['men', 260, 261, 'EEE'],
    ['men', 235, 210, 'A'],
    ['men', 235, 234, 'E'],
    ['men', 235, 252, 'EEEE'],
    ['men', 270, 255, 'E'],
    ['men', 270, 273, 'EEEE'],
    ['women', 230, 228, 'E'],
    ['women', 235, 207, 'A'],
    ['women', 235, 231, 'E'],
    ['women', 235, 249, 'EEEE'],
    ['women', 245, 237, 'E'],
    ['women', 245, 243, 'EE'],
    ['women', 220, 222, 'E'],
    ['women', 220, 240, 'EEEE'],
  ] as const)('%s %d mm with a girth of %d mm is %s', (sex, length, girth, letter) => {
    expect(japaneseGirth(length, letter, sex)).toBeCloseTo(girth, 9);
    expect(girthLetter(length, girth, sex)).toBe(letter);
  });

  // Read (a foot-care page, 2017): a measured 233 at 235 lies nearer to 231 than to 237.
  test('a woman of 235 mm with a measured girth of 233 mm is E', () => {
    expect(girthLetter(235, 233, 'women')).toBe('E');
  });

  // Read: bands run from 3 mm below the printed girth to 2 mm above it, in whole millimetres.
  test('a band holds 3 mm below its girth to 2 mm above it', () => {
    for (const letter of GIRTH_LETTERS) {
      const middle = japaneseGirth(250, letter, 'men');
      for (const off of [-3, -2, -1, 0, 1, 2]) expect(girthLetter(250, middle + off, 'men')).toBe(letter);
      expect(girthLetter(250, middle - 4, 'men')).not.toBe(letter);
      expect(girthLetter(250, middle + 3, 'men')).not.toBe(letter);
    }
  });

  // Read: 3 mm of girth with each 5 mm of length, 6 mm with each letter; men 3 mm above women.
  test('girth rises 3 mm a size and 6 mm a letter, and men stand 3 mm above women', () => {
    expect(japaneseGirth(255, 'E', 'men') - japaneseGirth(250, 'E', 'men')).toBeCloseTo(3, 9);
    expect(japaneseGirth(250, 'EE', 'men') - japaneseGirth(250, 'E', 'men')).toBe(6);
    expect(japaneseGirth(235, 'E', 'men') - japaneseGirth(235, 'E', 'women')).toBeCloseTo(3, 9);
  });
});

describe('the sizes that JIS S 5037 runs over, as reported', () => {
  // Read: men 20A to 30G, women 19.5A to 27EEEE, children 10.5B to 26G.
  test.each([
    ['20A', 200, 'A'],
    ['30G', 300, 'G'],
    ['19.5A', 195, 'A'],
    ['27EEEE', 270, 'EEEE'],
    ['10.5B', 105, 'B'],
    ['26G', 260, 'G'],
  ])('%s is read and printed again', (text, length, letter) => {
    const size = parseJapanese(text);
    expect(size).toEqual({ length, letter });
    expect(size && printJapanese(size)).toBe(text);
  });

  // Read: one page gives 9 mm a letter and 223 for a woman's E at 230; five others contradict it.
  test('a woman of 230 mm is E at 228 and not at 223, and letters are 6 mm apart', () => {
    expect(girthLetter(230, 228, 'women')).toBe('E');
    expect(girthLetter(230, 223, 'women')).toBe('D');
    expect(girthLetter(230, 228 + 9, 'women')).toBe('EEE');
  });
});

describe('Chinese lengths (GB 3293-1982 as reported; GB/T 3293.1-1998 is ISO 9407:1991)', () => {
  // Read: size 25 is a foot of 250 mm, and 25(3) is it with girth type 3.
  test('25 is a foot of 250 mm, and 25(3) has a girth type', () => {
    expect(chineseSize(250)).toEqual({ length: 250 });
    expect(parseChinese('25')).toEqual({ length: 250 });
    expect(parseChinese('25(3)')).toEqual({ length: 250, type: 3 });
  });
});
