import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FontBytes } from '../card/font/metrics.ts';
import { FONTS } from './places.ts';

/** The card's typeface in its two weights, as it stands in the package that ships it. */
export const fontsOnDisk = (): FontBytes => ({
  regular: new Uint8Array(readFileSync(join(FONTS, '400Regular/AtkinsonHyperlegibleNext_400Regular.ttf'))),
  bold: new Uint8Array(readFileSync(join(FONTS, '700Bold/AtkinsonHyperlegibleNext_700Bold.ttf'))),
});
