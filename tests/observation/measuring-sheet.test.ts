import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHECK_LINE, correctedReading, measuringSheet, type Point } from '../../src/observation/measuring-sheet.ts';
import { sheetSvg } from '../../src/observation/sheet-svg.ts';

const distance = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe.each(['a4', 'letter'] as const)('the measuring sheet on %s', (paper) => {
  const sheet = measuringSheet(paper);

  test('takes a foot of 310 mm along its diagonal', () => {
    expect(sheet.ruler.longest).toBe(320);
    expect(distance(sheet.ruler.heel, sheet.ruler.end)).toBeCloseTo(320, 9);
    expect(sheet.marks.some((mark) => mark.kind === 'number' && mark.number === 310)).toBe(true);
  });

  test('has a check line of 100 mm', () => {
    expect(distance(sheet.checkLine.from, sheet.checkLine.to)).toBeCloseTo(CHECK_LINE, 9);
    expect(CHECK_LINE).toBe(100);
  });

  test('keeps every mark 5 mm off the paper’s edge', () => {
    const points = sheet.marks.flatMap((mark) => (mark.kind === 'line' ? [mark.from, mark.to] : [mark.at]));
    for (const [x, y] of points) {
      expect(x).toBeGreaterThanOrEqual(5);
      expect(y).toBeGreaterThanOrEqual(5);
      expect(x).toBeLessThanOrEqual(sheet.width - 5);
      expect(y).toBeLessThanOrEqual(sheet.height - 5);
    }
  });

  test('puts each millimetre where it belongs', () => {
    const ticks = sheet.marks
      .filter((mark) => mark.kind === 'line')
      .map((mark) => distance(mark.from, sheet.ruler.heel));
    for (let mm = 90; mm <= 310; mm += 1) expect(ticks.some((tick) => Math.abs(tick - mm) < 1e-9)).toBe(true);
  });

  test('keeps the check line clear of the ruler', () => {
    const { heel, end } = sheet.ruler;
    for (const [x, y] of [sheet.checkLine.from, sheet.checkLine.to]) {
      const off = ((end[0] - heel[0]) * (y - heel[1]) - (end[1] - heel[1]) * (x - heel[0])) / 320;
      expect(off).toBeGreaterThan(15);
    }
  });

  test('is drawn in millimetres, without styles', () => {
    const svg = sheetSvg(sheet, (key) => `<${key}>`);
    expect(svg).toContain(
      `width="${sheet.width}mm" height="${sheet.height}mm" viewBox="0 0 ${sheet.width} ${sheet.height}"`,
    );
    expect(svg).not.toMatch(/style|NaN|undefined|<observation/);
    expect(svg).toContain('&#60;observation.sheet.check-line&#62;');
  });
});

describe('a reading off the printed sheet', () => {
  test('is corrected by what the check line measures', () => {
    expect(correctedReading(270, 100)).toEqual({ value: 270, findings: [] });
    expect(correctedReading(270, 97)).toEqual({
      value: 261.9,
      findings: [{ code: 'sheet-corrected', severity: 'note', data: { read: 270, mm: 261.9 } }],
    });
  });

  test('is refused past 5 %, and for nonsense', () => {
    expect(correctedReading(270, 95).value).toBe(256.5);
    expect(correctedReading(270, 105).value).toBe(283.5);
    for (const line of [94, 94.9, 105.1, 0, -100, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(correctedReading(270, line)).toMatchObject({
        findings: [{ code: 'sheet-not-to-size', severity: 'error' }],
      });
      expect(correctedReading(270, line).value).toBeUndefined();
    }
  });

  test('gives back the foot, however the printer scaled', () => {
    fc.assert(
      fc.property(fc.integer({ min: 900, max: 3100 }), fc.integer({ min: 951, max: 1049 }), (tenths, scale) => {
        const foot = tenths / 10;
        const printed = scale / 1000;
        // A smaller print makes the foot reach a higher number.
        expect(correctedReading(foot / printed, 100 * printed).value).toBeCloseTo(foot, 1);
      }),
    );
  });
});
