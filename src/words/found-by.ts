/**
 * How well something is found by what somebody typed, one word or more: 0 when one of its words begins so, 1 when one
 * holds it; no answer when it is not found. Case, accents, ß and the ways to write an Arabic letter make no difference.
 *
 * @example
 * foundBy('wandern', 'Wandern am Berg') // 0
 * foundBy('fussball', 'Fußball auf Rasen') // 0
 * foundBy('zzz', 'Tennis') // undefined
 */
export function foundBy(typed: string, text: string): 0 | 1 | undefined {
  const wanted = folded(typed.trim());
  const within = folded(text);
  for (let place = within.indexOf(wanted); place >= 0; place = within.indexOf(wanted, place + 1)) {
    if (!/[\p{L}\p{N}]/u.test(within.charAt(place - 1))) return 0;
  }
  return within.includes(wanted) ? 1 : undefined;
}

const folded = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/[\p{M}\u0640]/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll('ة', 'ه')
    .replaceAll('ى', 'ي');
