import type { Words } from '../../words/words.ts';
import type { ListStyle } from '../../worker/stock-service.ts';

/** How spreadsheets read a list where the language writes decimals so: a decimal comma goes with semicolons. Common practice. */
export function listStyle(words: Words): ListStyle {
  return words.number(0.5, 1).includes(',') ? { delimiter: ';', decimal: ',' } : { delimiter: ',', decimal: '.' };
}
