/// <reference path="../stock/papaparse.d.ts" />
import papaparse from 'papaparse';
import { findingText } from '../screens/shop/finding-text.ts';
import { guarded } from '../stock/formula.ts';
import type { Finding } from '../units/result.ts';
import type { Words } from '../words/words.ts';
import type { ListStyle } from './stock-service.ts';

/** Findings as a list for a spreadsheet, to be worked through beside the stock list. */
export function findingsList(findings: readonly Finding[], words: Words, { delimiter }: ListStyle): Blob {
  const header = ['severity', 'line', 'column', 'value', 'what'].map((name) => words.say(`shop.findings.${name}`));
  const rows = findings.map((finding) => [
    words.say(`shop.findings.${finding.severity}`),
    String(finding.line ?? ''),
    guarded(finding.column ?? ''),
    guarded(finding.value ?? ''),
    guarded(findingText(finding, words)),
  ]);
  const text = papaparse.unparse([header, ...rows], { delimiter, newline: '\n' });
  return new Blob(['\uFEFF', text, '\n'], { type: 'text/csv;charset=utf-8' });
}
