import { languageNames } from 'virtual:language-names';

/**
 * A language by its own name: Deutsch, English. Asked for when the kiosk is built, since asking the browser costs more
 * than drawing a page.
 */
export const languageName = (language: string): string => languageNames[language] ?? language;
