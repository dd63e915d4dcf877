import { describe, expect, it } from 'vitest';
import { sentencesIn, told } from './sentences.ts';
import { LANGUAGES } from './word-files.ts';

/** Whether any of these words stands in a text, accented letters counted as letters. */
const holds = (words: string) => {
  const word = new RegExp(`(?<![\\p{L}’'])(${words})(?!\\p{L})`, 'iu');
  return (text: string) => word.test(text);
};
/** English words that no sentence of the others holds. Words they share with it (in, so, war, note, simple) are left out. */
const isEnglish = holds(
  'the|and|you|your|with|of|for|is|are|this|that|we|our|not|what|which|how|when|shoes?|foot|feet|pairs?|wear|please',
);
const longWords = (text: string) => text.match(/\p{L}{2,}/gu)?.length ?? 0;
/** The words of the command line, which are code and not speech. */
const CODE = /^words\/command-line: finding\.(copy|shelf)-unknown$/;
/**
 * Latin letters that stand in Arabic because the thing itself bears them: size systems, paper, units, file formats,
 * names of files, of fields and of commands, and what is typed there.
 */
const AS_PRINTED =
  /(EU|UK|US|PIN|PDF|CSV|SVG|PNG|JSON|UTF-8|HTTPS?|EUR|Mondopoint|Letter|viewBox|localhost|A[45]|N\/mm|k?Pa|k?m\/[sh]|in|oz|z|p|true|false|id|[\w/.-]+\.(json|csv)|print-templates|stories\/|flows\/words|common-practice|--(out|left|help)|https:\/\/kiosk\.example|maple 14)(?![A-Za-z])/g;
const OTHERS = LANGUAGES.filter((language) => language !== 'en');

describe.each(OTHERS)('in %s', (language) => {
  const sentences = sentencesIn(language).filter(({ at }) => !CODE.test(at));

  it('no English is left', () => {
    expect(told(sentences.filter(({ text }) => isEnglish(text)))).toEqual([]);
  });

  it('no sentence was only copied', () => {
    expect(told(sentences.filter(({ text, whole, english }) => longWords(text) >= 3 && whole === english))).toEqual([]);
  });
});

it('Arabic has no Latin word in it but what things bear themselves', () => {
  const sentences = sentencesIn('ar').filter(({ at, key }) => key !== 'shop.native-review' && !CODE.test(at));
  const left = sentences.filter(({ text }) => /[A-Za-z]{2,}/.test(text.replace(AS_PRINTED, '')));
  expect(told(left)).toEqual([]);
});

describe('the shop speaks to customers as a stranger would, politely', () => {
  it('in French with vous', () => {
    const familiar = holds('tu|toi|ton|ta|tes');
    expect(told(sentencesIn('fr').filter(({ text }) => familiar(text)))).toEqual([]);
  });

  it('in Spanish with usted', () => {
    const familiar = holds('tú|tu|tus|ti|contigo|tienes|puedes|quieres|eres|vosotros|vuestr[oa]s?');
    expect(told(sentencesIn('es').filter(({ text }) => familiar(text)))).toEqual([]);
  });
});

describe('signs of each language', () => {
  it('French keeps its double signs with the word before them', () => {
    expect(told(sentencesIn('fr').filter(({ whole }) => / [?!:;»%]|« /.test(whole)))).toEqual([]);
    expect(told(sentencesIn('fr').filter(({ text }) => /[^\s][?!]/.test(text.replaceAll('\u00a0', ' '))))).toEqual([]);
  });

  it('Spanish opens what it closes', () => {
    const count = (text: string, sign: string) => text.split(sign).length;
    const odd = sentencesIn('es').filter(({ whole }) => count(whole, '?') !== count(whole, '¿'));
    expect(told(odd)).toEqual([]);
  });

  it('Arabic uses its own comma, semicolon and question mark', () => {
    expect(told(sentencesIn('ar').filter(({ text }) => /[\u0600-\u06ff]\s?[,;?]/.test(text)))).toEqual([]);
  });

  it('Arabic writes its numbers in the digits of the boxes', () => {
    expect(told(sentencesIn('ar').filter(({ whole }) => /[\u0660-\u0669\u06f0-\u06f9]/.test(whole)))).toEqual([]);
  });
});
