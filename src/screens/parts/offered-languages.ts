import type { Shop } from '../../card/shop.ts';
import { LANGUAGES } from './word-files.ts';

/** The languages the shop offers; all there are, until it is known or when it offers none of them. */
export function offeredLanguages(shop: Shop | undefined): readonly string[] {
  const offered = LANGUAGES.filter((language) => shop?.languages.includes(language));
  return offered.length > 0 ? offered : LANGUAGES;
}
