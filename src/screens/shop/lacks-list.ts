/// <reference path="../../stock/papaparse.d.ts" />
import papaparse from 'papaparse';
import type { Gaps } from '../../gaps/gaps.ts';
import { shownGaps, usualMinutes } from '../../gaps/shown.ts';
import { guarded } from '../../stock/formula.ts';
import type { Words } from '../../words/words.ts';
import type { ListStyle } from '../../worker/stock-service.ts';
import { lackText } from './lack-text.ts';

/** What the range lacks as a list for a spreadsheet: what the screen shows and no more. */
export function lacksList(gaps: Gaps, words: Words, { delimiter }: ListStyle): string {
  const minutes = usualMinutes(gaps);
  const say = (key: string): string => words.say(`shop.lacks.${key}`);
  const rows = [
    [say('topic'), say('what'), say('times')],
    [say('sums'), say('visits'), String(gaps.visits)],
    ...(minutes === undefined ? [] : [[say('sums'), say('minutes'), String(minutes)]]),
    ...shownGaps(gaps).map((row) => [
      words.say(`lacks.${row.topic}.title`),
      guarded(lackText(row, words)),
      String(row.count),
    ]),
  ];
  return `\uFEFF${papaparse.unparse(rows, { delimiter, newline: '\n' })}\n`;
}
