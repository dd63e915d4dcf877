const known = new Map<string, string>();

/**
 * A language by its own name: Deutsch, English. Kept once found, since asking the browser costs more than drawing a page.
 */
export function languageName(language: string): string {
  const before = known.get(language);
  if (before !== undefined) return before;
  const name = new Intl.DisplayNames([language], { type: 'language' }).of(language) ?? language;
  const written = name.charAt(0).toLocaleUpperCase(language) + name.slice(1);
  known.set(language, written);
  return written;
}
