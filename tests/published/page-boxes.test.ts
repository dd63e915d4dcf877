import { describe, expect, it } from 'vitest';
import { openPdf } from '../card/read-pdf.ts';
import { longFacts, toyFacts, toyPdf } from '../card/toy-card.ts';

/** Millimetres. A5 and A4: ISO 216. Letter: ANSI/ASME Y14.1, 8.5 by 11 inches of 25.4 mm. Roll: 80 mm, the trade's width. */
const PAGES = [
  { format: 'a5', width: 148, height: 210 },
  { format: 'a5-two-up', width: 297, height: 210 },
  { format: 'a4', width: 210, height: 297 },
  { format: 'letter', width: 8.5 * 25.4, height: 11 * 25.4 },
  { format: 'roll80', width: 80, height: undefined },
];
/** A PDF unit is 1/72 inch (ISO 32000). */
const MM = 25.4 / 72;

describe.each(PAGES)('a card printed as $format', ({ format, width, height }) => {
  it('has pages of the published size within a tenth of a millimetre', async () => {
    for (const facts of [toyFacts, longFacts]) {
      const pdf = await openPdf(await toyPdf(facts, format));
      for (let number = 1; number <= pdf.numPages; number++) {
        const [left = 0, bottom = 0, right = 0, top = 0] = (await pdf.getPage(number)).view;
        expect(Math.abs((right - left) * MM - width)).toBeLessThanOrEqual(0.1);
        if (height !== undefined) expect(Math.abs((top - bottom) * MM - height)).toBeLessThanOrEqual(0.1);
      }
    }
  });
});
