import { dateLanguage } from '../../units/date-language.ts';
import type { Words } from '../../words/words.ts';

/** A local date and time as the language writes it: `25 Nov 2026, 09:12`. */
export const momentText = (iso: string, words: Words): string =>
  new Intl.DateTimeFormat(dateLanguage(words.language), { dateStyle: 'medium', timeStyle: 'short' }).format(
    new Date(iso),
  );
