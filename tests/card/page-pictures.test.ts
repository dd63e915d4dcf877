import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import type { CardFacts } from '../../src/card/card.ts';
import { openPdf, pagePicture } from './read-pdf.ts';
import { longFacts, referFacts, toyFacts, toyPdf } from './toy-card.ts';

/**
 * Pages as pictures, against ones that were looked at and found good. After a change that is meant to be seen, run
 * `KEEP_PICTURES=1 npx vitest run tests/card/page-pictures.test.ts`, look at the new ones in `tests/card/pictures`,
 * and commit them.
 */
const FOLDER = 'tests/card/pictures';
const DPI = 50;
/** A dot counts as different from this many of 256 greys on; shades at the edge of a letter may vary with the drawing library. */
const GREYS = 40;
/** Share of different dots up to which two pictures count as the same: about one line of text in a page of them. */
const SHARE = 0.004;

const PAGES: readonly (readonly [string, CardFacts, string, 'en' | 'de', number])[] = [
  ['a5-front', toyFacts, 'a5', 'en', 1],
  ['a5-back-every-caution', longFacts, 'a5', 'de', 2],
  ['a4-refer', referFacts, 'a4', 'en', 1],
  ['roll80', toyFacts, 'roll80', 'en', 1],
];

describe.each(PAGES)('the page %s', (name, facts, format, language, number) => {
  it('looks as it did when it was last found good', async () => {
    const picture = await pagePicture(await openPdf(await toyPdf(facts, format, language)), number, DPI);
    const greys = greysOf(picture.data);
    const path = `${FOLDER}/${name}.png`;
    if (process.env['KEEP_PICTURES']) keep(path, greys, picture.width, picture.height);
    expect(existsSync(path), `${path} is there`).toBe(true);
    const known = PNG.sync.read(readFileSync(path));
    expect([picture.width, picture.height]).toEqual([known.width, known.height]);
    const before = greysOf(known.data);
    const different = greys.filter((grey, at) => Math.abs(grey - (before[at] ?? 0)) > GREYS).length;
    expect(different / greys.length, `share of dots of ${name} that differ`).toBeLessThanOrEqual(SHARE);
  });
});

/** Luma of each dot, as television weighs it: ITU-R BT.601. */
function greysOf(data: ArrayLike<number>): readonly number[] {
  const at = (index: number) => data[index] ?? 0;
  return Array.from({ length: data.length / 4 }, (_, i) =>
    Math.round(0.299 * at(4 * i) + 0.587 * at(4 * i + 1) + 0.114 * at(4 * i + 2)),
  );
}

function keep(path: string, greys: readonly number[], width: number, height: number): void {
  mkdirSync(FOLDER, { recursive: true });
  const png = new PNG({ width, height });
  greys.forEach((grey, at) => {
    png.data.set([grey, grey, grey, 255], 4 * at);
  });
  writeFileSync(path, PNG.sync.write(png, { colorType: 0 }));
}
