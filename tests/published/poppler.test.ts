import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { longFacts, toyPdf } from '../card/toy-card.ts';

/** Poppler's readers (pdffonts, pdftotext), where they are installed: a second opinion beside pdf.js. */
const installed = spawnSync('pdffonts', ['-v']).error === undefined;

describe.runIf(installed)('a printed card, as poppler reads it', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'poppler-'));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it.each(['a5', 'a5-two-up', 'a4', 'letter', 'roll80'])('as %s has all fonts embedded, in part', async (format) => {
    const file = join(folder, `${format}.pdf`);
    writeFileSync(file, await toyPdf(longFacts, format));
    const rows = execFileSync('pdffonts', [file], { encoding: 'utf8' }).trim().split('\n').slice(2);
    expect(rows.length).toBeGreaterThan(0);
    // The columns: name, type, encoding, embedded, subset, unicode, object.
    for (const row of rows) expect(row).toMatch(/^[A-Z]{6}\+Atkinson\S* .* yes +yes +yes +\d+ +\d+ *$/);
  });

  it('reads ticket, boxes, pairs, the most urgent caution and shoe care in this order', async () => {
    const file = join(folder, 'order.pdf');
    writeFileSync(file, await toyPdf(longFacts, 'a5'));
    const text = execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' });
    const places = [
      'maple 14',
      'Boxes to fetch',
      '3 pairs to try',
      'Now: call 112',
      'Good to know',
      'Looking after',
    ].map((part) => text.indexOf(part));
    expect(places[0]).toBeGreaterThanOrEqual(0);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });
});
