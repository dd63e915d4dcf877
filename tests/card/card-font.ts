import { readFileSync } from 'node:fs';
import { measureOf } from '../../src/card/font/metrics.ts';
import { printable } from '../../src/card/font/printable.ts';

const fontAt = (weight: string) =>
  new Uint8Array(
    readFileSync(
      `node_modules/@expo-google-fonts/atkinson-hyperlegible-next/${weight}/AtkinsonHyperlegibleNext_${weight}.ttf`,
    ),
  );
const measure = measureOf({ regular: fontAt('400Regular'), bold: fontAt('700Bold') });

/** The characters of a text that the card's font has no letter for. */
export const missingInCardFont = (text: string): readonly string[] => printable(text, measure).missing;
