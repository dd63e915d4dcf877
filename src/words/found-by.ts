/** Fewer letters than this say too little: `PE` is a word of its own, and not the start of every pedal. Our choice. */
const SHORT = 3;

/**
 * How well something is found by what somebody typed: every word of it, in any order. 0 when all begin a word of the
 * text, 1 when one is only held by a word; no answer when one is nowhere. A very short word must be one of the text's
 * own. Case, accents, ß and the ways to write an Arabic letter make no difference.
 *
 * @example
 * foundBy('wandern', 'Wandern am Berg') // 0
 * foundBy('fussball', 'Fußball auf Rasen') // 0
 * foundBy('pe', 'Road cycling pedal') // undefined
 * foundBy('zzz', 'Tennis') // undefined
 */
export function foundBy(typed: string, text: string): 0 | 1 | undefined {
  const within = wordsOf(text);
  const ranks = wordsOf(typed).map((wanted) => rankOf(wanted, within));
  if (ranks.length === 0 || ranks.includes(undefined)) return undefined;
  return ranks.includes(1) ? 1 : 0;
}

function rankOf(wanted: string, within: readonly string[]): 0 | 1 | undefined {
  if (within.includes(wanted)) return 0;
  if (wanted.length < SHORT) return undefined;
  if (within.some((word) => word.startsWith(wanted))) return 0;
  return within.some((word) => word.includes(wanted)) ? 1 : undefined;
}

const wordsOf = (text: string): readonly string[] => folded(text).match(/[\p{L}\p{N}]+/gu) ?? [];

const folded = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/[\p{M}\u0640]/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll('ة', 'ه')
    .replaceAll('ى', 'ي');
