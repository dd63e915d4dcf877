import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { drawCard } from '../../src/card/draw-card.ts';
import { wordsOnDisk } from '../../src/command-line/words-on-disk.ts';
import { allText, openPdf, pagePicture, pageText } from './read-pdf.ts';
import { fonts, longFacts, toyFacts, toyPdf, toyTemplate, toyWordsOf } from './toy-card.ts';

const SLOW = 20_000;

describe('a printed card', () => {
  it(
    'is the same to the byte for the same facts and date, twice over and in another process',
    async () => {
      const first = Buffer.from(await toyPdf(toyFacts, 'a5'));
      expect(first.equals(Buffer.from(await toyPdf(toyFacts, 'a5')))).toBe(true);
      const script = `import('./tests/card/toy-card.ts').then(async (t) => process.stdout.write(Buffer.from(await t.toyPdf(t.toyFacts, 'a5'))))`;
      const other = execFileSync('npx', ['tsx', '-e', script], { maxBuffer: 1e7 });
      expect(first.equals(other)).toBe(true);
    },
    SLOW,
  );

  it('differs where the date does', async () => {
    const first = Buffer.from(await toyPdf(toyFacts, 'a5'));
    expect(first.equals(Buffer.from(await toyPdf({ ...toyFacts, date: '2026-11-26' }, 'a5')))).toBe(false);
  });

  it('embeds every font it uses, in part', async () => {
    const file = Buffer.from(await toyPdf(longFacts, 'a5')).toString('latin1');
    const fonts = file.match(/\/Type \/FontDescriptor/g)?.length ?? 0;
    expect(fonts).toBe(2);
    expect(file.match(/\/FontFile2 /g)).toHaveLength(fonts);
    expect(file.match(/\/FontName \/[A-Z]{6}\+Atkinson/g)).toHaveLength(fonts);
  });

  it('on a roll is black alone, whatever colours the shop’s logo has', async () => {
    const logo = '<svg viewBox="0 0 10 10"><path d="M0 0h10v10H0z" fill="#d02020" stroke="green"/></svg>';
    const pdf = await toyPdf({ ...toyFacts, shop: { ...toyFacts.shop, logo } }, 'roll80');
    const { data } = await pagePicture(await openPdf(pdf), 1, 50);
    const coloured = data.filter((red, at) => at % 4 === 0 && (red !== data[at + 1] || red !== data[at + 2]));
    expect(coloured.length).toBe(0);
  });

  it('names its title and language', async () => {
    const pdf = await openPdf(await toyPdf(toyFacts, 'a5', 'de'));
    const { info } = (await pdf.getMetadata()) as { info: { Title?: string; Language?: string } };
    expect(info.Title).toContain('maple 14');
    expect(info.Language).toBe('de');
  });

  it('is refused, not drawn wrongly, in a language from right to left', async () => {
    const drawn = drawCard(toyFacts, wordsOnDisk('ar'), toyTemplate('a5'), fonts);
    await expect(drawn).rejects.toThrow('reading copy');
  });

  it('stays under 120 kB', async () => {
    for (const format of ['a5', 'a5-two-up', 'a4', 'letter', 'roll80']) {
      expect((await toyPdf(longFacts, format)).length).toBeLessThan(120_000);
    }
  });

  it('reads in order: ticket, boxes, title, pairs, strips on the front; cautions before shoe care on the back', async () => {
    const pdf = await openPdf(await toyPdf(toyFacts, 'a5'));
    const front = await pageText(pdf, 1);
    inOrder(front, ['maple 14', 'Boxes to fetch', 'shelf C4', '3 pairs to try', 'Toy Sandpiper', 'How they compare']);
    inOrder(await allText(pdf), ['Try each pair', 'Good to know', 'Getting used', 'Looking after']);
  });

  it('puts the most urgent caution first', async () => {
    const all = await allText(await openPdf(await toyPdf(longFacts, 'a4')));
    inOrder(all, ['Now: call 112', 'Today: see a doctor', 'Before you choose shoes', 'Good to know']);
  });

  it('says in both languages that it is not a medical device, and shows no figure that ranks a pair', async () => {
    for (const language of ['en', 'de'] as const) {
      const all = await allText(await openPdf(await toyPdf(toyFacts, 'a5', language)));
      expect(all).toContain(toyWordsOf(language).say('card.disclaimer').slice(0, 30));
      expect(all).not.toMatch(/%|\b0[.,]\d\d/);
    }
  });
});

function inOrder(text: string, parts: readonly string[]): void {
  let from = 0;
  for (const part of parts) {
    const at = text.indexOf(part, from);
    expect(at, `“${part}” after place ${from} in: ${text.slice(0, 400)}`).toBeGreaterThanOrEqual(from);
    from = at;
  }
}
