import { create, type Font } from 'fontkit';

/** Font files as bytes; whoever calls loads them, from disk or over the network. */
export interface FontBytes {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** How wide text is and which characters there are: all that layout needs to know of a font. */
export interface Measure {
  /** Width in ems of one line of text, kerning included, as the PDF will draw it. */
  width(text: string, bold: boolean): number;
  has(codePoint: number): boolean;
}

/** Opening a font takes longer than laying a card out, so that each set is opened once. */
const measures = new WeakMap<FontBytes, Measure>();

/** Reads both weights. Throws on bytes that are no font: fonts come with the program, so that is a bug. */
export function measureOf(fonts: FontBytes): Measure {
  const known = measures.get(fonts);
  if (known) return known;
  const fresh = readMeasure(fonts);
  measures.set(fonts, fresh);
  return fresh;
}

function readMeasure(fonts: FontBytes): Measure {
  const regular = opened(fonts.regular);
  const bold = opened(fonts.bold);
  const known = new Map<string, number>();
  return {
    has: (codePoint) => regular.hasGlyphForCodePoint(codePoint) && bold.hasGlyphForCodePoint(codePoint),
    width(text, isBold) {
      // The PDF writer sets each word on its own, with the space after it, so kerning never crosses a space.
      let sum = 0;
      for (const word of text.match(/\S+\s*|\s+/g) ?? []) sum += wordWidth(word, isBold);
      return sum;
    },
  };
  function wordWidth(word: string, isBold: boolean): number {
    const key = `${isBold ? 'b' : 'r'}${word}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const font = isBold ? bold : regular;
    const width = font.layout(word).advanceWidth / font.unitsPerEm;
    known.set(key, width);
    return width;
  }
}

function opened(bytes: Uint8Array): Font {
  const font = create(bytes as Parameters<typeof create>[0]);
  if (!('layout' in font)) throw new Error('Expected one font, found a collection');
  return font;
}
