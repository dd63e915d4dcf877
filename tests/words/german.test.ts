import { describe, expect, it } from 'vitest';
import { sentencesOf } from '../../src/words/bundle.ts';
import { wordFiles } from './word-files.ts';

/** English words that no German sentence holds. Words the two share (in, so, was, am, war, her, Name) are left out. */
const ENGLISH =
  /\b(the|and|you|your|with|of|for|is|are|this|that|it|we|our|to|not|or|from|what|which|how|when|shoes?|foot|feet|pair|pairs|wear|tap|please)\b/i;
const german = wordFiles('de');
const english = wordFiles('en');
const sentences = [...german].flatMap(([area, bundle]) =>
  [...sentencesOf(bundle)].map(([key, text]) => ({
    at: `${area}: ${key}`,
    // Data and quoted field names of files are not speech.
    text: text.replace(/\{\{[^}]*\}\}|„[^“]*“/g, ''),
    english: sentencesOf(english.get(area) ?? {}).get(key),
  })),
);

describe('German', () => {
  it('has no English left in it', () => {
    expect(sentences.filter(({ text }) => ENGLISH.test(text)).map(({ at, text }) => `${at}: ${text}`)).toEqual([]);
  });

  it('has no sentence that was only copied', () => {
    const copied = sentences.filter(({ text, english }) => text.split(' ').length >= 3 && text === english);
    expect(copied.map(({ at, text }) => `${at}: ${text}`)).toEqual([]);
  });

  it('speaks to customers as Sie', () => {
    const du = /\b(du|dich|dir|dein|deine|deinen|deinem|deiner|euch|euer|eure)\b/i;
    expect(sentences.filter(({ text }) => du.test(text)).map(({ at, text }) => `${at}: ${text}`)).toEqual([]);
  });
});
