import { expect, test } from 'vitest';
import { rightToLeft } from '../../src/words/right-to-left.ts';

test('rightToLeft: Arabic is, German is not', () => {
  expect(rightToLeft('ar')).toBe(true);
  expect(rightToLeft('de')).toBe(false);
});
