import { encodeQR } from 'qr';
import { describe, expect, it } from 'vitest';
import { codePiece, QUIET } from '../../src/card/layout/blocks/code.ts';
import { codeInPicture, openPdf } from '../card/read-pdf.ts';
import { toyFacts, toyPdf } from '../card/toy-card.ts';

/** As much as a QR code of version 10 holds in bytes at level M: 213 (ISO/IEC 18004, table 7). */
const LONGEST = `https://kiosk.example/#c=${'AbCdEfGh0123456789-_'.repeat(10)}`.slice(0, 213);

describe('the square code on a printed card', () => {
  it.each([
    ['a5', 110],
    ['a5-two-up', 110],
    ['a4', 110],
    ['letter', 110],
    ['roll80', 203],
  ] as const)('is read from a picture of the page: %s at %i dots an inch', async (format, dpi) => {
    for (const code of [toyFacts.code, LONGEST]) {
      const pdf = await openPdf(await toyPdf({ ...toyFacts, code }, format));
      expect(await codeInPicture(pdf, dpi)).toEqual([code]);
    }
  });

  it('has small squares of half a millimetre or more and a light border of four of them (ISO/IEC 18004)', () => {
    for (const room of [10, 30, 40, 100]) {
      const { marks, height } = codePiece(LONGEST, room, { module: 0.6, least: 0.5 });
      const code = marks.find((mark) => mark.kind === 'code');
      if (!code) throw new Error('There is a code');
      expect(code.module).toBeGreaterThanOrEqual(0.5);
      expect(code.x).toBeCloseTo(QUIET * code.module);
      expect(height).toBeCloseTo((code.rows.length + 2 * QUIET) * code.module);
    }
  });

  it('is 57 squares wide for 213 bytes at level M (ISO/IEC 18004, version 10)', () => {
    const code = codePiece(LONGEST, 40, { module: 0.6, least: 0.5 }).marks.find((mark) => mark.kind === 'code');
    expect(code?.rows).toHaveLength(57);
    expect(encodeQR('x'.repeat(214), 'raw', { ecc: 'medium', border: 1 })).toHaveLength(61 + 2);
  });
});
