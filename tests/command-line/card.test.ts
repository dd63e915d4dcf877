import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { allText, openPdf } from '../card/read-pdf.ts';
import { command, NURSE, ownFolder, STOCK, STORY } from './running.ts';

const own = ownFolder();
afterAll(own.gone);
const STORIES = readdirSync('flows/fitting/stories').map((file) => `flows/fitting/stories/${file}`);
const DAY = ['--date', '2026-11-25'] as const;

describe('a card written from the command line', () => {
  it('comes for every story, into a folder that was not there', { timeout: 120_000 }, async () => {
    const { code, out } = await command('card', ...STORIES, '--stock', STOCK, '--out', own.at('samples'), ...DAY);
    expect(code).toBe(0);
    const wanted = STORIES.map((path) => path.split('/').at(-1)?.replace('.json', '.pdf')).sort();
    expect(readdirSync(own.at('samples')).sort()).toEqual(wanted);
    expect(out.trim().split('\n')).toHaveLength(STORIES.length);
    for (const file of wanted) {
      const bytes = readFileSync(own.at(`samples/${file}`));
      expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
      expect(bytes.length, file).toBeLessThan(120_000);
    }
  });

  it('has the same bytes in two runs of one day, and other bytes on another', async () => {
    const write = async (name: string, ...more: readonly string[]) => {
      await command('card', NURSE, '--stock', STOCK, '--out', own.at(name), ...more);
      return readFileSync(own.at(name));
    };
    const first = await write('one.pdf', ...DAY);
    expect(first.equals(await write('two.pdf', ...DAY))).toBe(true);
    expect(first.equals(await write('three.pdf', '--date', '2026-11-26'))).toBe(false);
  });

  it.each(['a5', 'a5-two-up', 'a4', 'letter', 'roll80'])('comes in the format %s', async (format) => {
    const { code } = await command(
      'card',
      STORY,
      '--stock',
      STOCK,
      '--out',
      own.at('f.pdf'),
      '--format',
      format,
      ...DAY,
    );
    expect(code).toBe(0);
  });

  it('says the ticket, the day and the language asked for', async () => {
    const { code } = await command(
      ...[
        'card',
        NURSE,
        '--stock',
        STOCK,
        '--out',
        own.at('de.pdf'),
        '--language',
        'de',
        '--ticket',
        'birch 7',
        ...DAY,
      ],
    );
    expect(code).toBe(0);
    const text = await allText(await openPdf(new Uint8Array(readFileSync(own.at('de.pdf')))));
    expect(text).toContain('birch 7');
    expect(text).toMatch(/25\.\s*November 2026/);
  });

  it('is a page to read with --html, for the fitter with --copy fitter', async () => {
    const { code } = await command(
      ...['card', NURSE, '--stock', STOCK, '--out', own.at('f.html'), '--html', '--copy', 'fitter', ...DAY],
    );
    expect(code).toBe(0);
    expect(readFileSync(own.at('f.html'), 'utf8')).toMatch(/^<!doctype html>[\s\S]*@page \{ size: A4;/i);
  });

  it('comes on A4 for the fitter, and on Letter where the shop prints on Letter', async () => {
    const pageOf = async (...more: readonly string[]) => {
      const { code } = await command('card', NURSE, '--stock', STOCK, '--out', own.at('p.pdf'), ...DAY, ...more);
      expect(code).toBe(0);
      const [, , width = 0, height = 0] = (
        await (await openPdf(new Uint8Array(readFileSync(own.at('p.pdf'))))).getPage(1)
      ).view;
      // Millimetres from points.
      return [width, height].map((side) => Math.round((side / 72) * 2540) / 100);
    };
    const shop = JSON.parse(readFileSync('demo/shop.json', 'utf8'));
    const { logo: _logo, ...plain } = shop;
    writeFileSync(own.at('letter.json'), JSON.stringify({ ...plain, cardFormat: 'letter' }));
    // ISO 216 and, for Letter, 8.5 by 11 inches.
    expect(await pageOf()).toEqual([148, 210]);
    expect(await pageOf('--copy', 'fitter')).toEqual([210, 297]);
    expect(await pageOf('--copy', 'fitter', '--shop', own.at('letter.json'))).toEqual([215.9, 279.4]);
    expect(await pageOf('--copy', 'fitter', '--format', 'a5')).toEqual([148, 210]);
  });

  it('that cannot be written leaves no part of itself behind', async () => {
    // A folder stands where the card should, and a file where its folder should.
    mkdirSync(own.at('shut/same-again.pdf'), { recursive: true });
    writeFileSync(own.at('plain'), '');
    for (const [out, wrong] of [
      ['shut', 'shut/same-again.pdf'],
      ['plain/card.pdf', 'plain/card.pdf'],
    ] as const) {
      const { code, err } = await command('card', STORY, '--stock', STOCK, '--out', own.at(out), ...DAY);
      expect(code).toBe(1);
      expect(err).toContain(`${wrong} cannot be written`);
    }
    expect(readdirSync(own.at('shut'))).toEqual(['same-again.pdf']);
    expect(readdirSync(own.at('shut/same-again.pdf'))).toEqual([]);
  });
});

describe('a map', () => {
  it('is drawn with the conditions in words, the same each time', async () => {
    expect((await command('map', '--out', own.at('a.svg'))).code).toBe(0);
    await command('map', 'flows/fitting', '--out', own.at('b.svg'));
    const svg = readFileSync(own.at('a.svg'), 'utf8');
    expect(svg).toMatch(/^<svg /);
    expect(svg).toBe(readFileSync(own.at('b.svg'), 'utf8'));
  });
});
