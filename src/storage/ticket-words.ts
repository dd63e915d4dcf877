import { rightToLeft } from '../words/right-to-left.ts';

/**
 * Neutral words that are easy to say across a counter, by language: plants, animals and plain things, no two alike in
 * sound. Our choice. As many in each as share no factor with the step between two tickets' words.
 */
const WORDS = {
  en: 'maple heron pebble willow lantern otter harbour thistle bramble kettle cedar meadow copper linnet saddle tulip',
  de: 'Ahorn Reiher Distel Specht Birke Lerche Tulpe Igel Kastanie Schwan Efeu Dachs Wacholder Nelke Pappel Flieder',
  fr: 'érable héron chardon loutre bouleau alouette tulipe mésange noisetier cygne lierre muguet genévrier pivoine peuplier lilas',
  es: 'arce grulla tomillo nutria abedul alondra tulipán erizo castaño cisne hiedra jazmín enebro clavel chopo magnolia',
  ar: 'نخلة زيتون رمان ياسمين غزال بلبل صفصاف نعناع سنجاب دلفين فراشة نرجس عصفور زعتر توت قنفذ',
} as const;

/**
 * The words that tickets of a shop go round. A card in Latin letters has no letters for an Arabic word, so such a visit
 * takes its word from its own language; a language without a list takes English.
 *
 * @example
 * ticketWords('de', 'ar')[0] // 'Ahorn'
 * ticketWords('ar', 'fr')[0] // 'érable'
 */
export function ticketWords(fitters: string, visit: string): readonly string[] {
  const language = rightToLeft(fitters) && !rightToLeft(visit) ? visit : fitters;
  const plain = language.slice(0, 2);
  return (plain in WORDS ? WORDS[plain as keyof typeof WORDS] : WORDS.en).split(' ');
}
