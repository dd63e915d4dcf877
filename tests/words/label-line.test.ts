import { expect, it } from 'vitest';
import { labelLine } from '../../src/card/text/label-line.ts';
import { wordsOnDisk } from '../../src/command-line/words-on-disk.ts';

const LABELS = { eu: '39.5', uk: '6', usMen: '7', usWomen: '8.5', mondopoint: '247' };

it.each([
  ['en', '39.5'],
  ['de', '39,5'],
  ['fr', '39,5'],
  ['es', '39,5'],
])('a size that we worked out is written in %s as %s', (language, size) => {
  expect(labelLine(LABELS, wordsOnDisk(language))).toContain(`EU ${size}`);
});
