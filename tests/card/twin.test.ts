import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { textOf } from '../../src/card/text/text-of.ts';
import { twinOf, twinPage } from '../../src/card/twin.ts';
import { longFacts, toyFacts, toyWordsOf } from './toy-card.ts';

const html = (facts = toyFacts, language: 'en' | 'de' = 'en') => twinOf(textOf(facts, toyWordsOf(language)));

describe('the reading copy', () => {
  it('says everything that is printed: title, boxes, pairs, strips, tasks, cautions, care', () => {
    const words = toyWordsOf('en');
    const page = html(longFacts);
    const plain = page.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ');
    for (const part of [
      '3 pairs to try',
      'shelf C4',
      'Toy Millrace',
      'C is not recorded.',
      'Ten small bounces',
      '265 mm',
    ]) {
      expect(plain).toContain(part);
    }
    for (const caution of longFacts.cautions) expect(plain).toContain(words.say(`caution.${caution.code}.text`));
  });

  it('has one first heading, and no heading skips a level', () => {
    const levels = [...html(longFacts).matchAll(/<h([1-6])/g)].map(([, level]) => Number(level));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    const body = levels.slice(levels.indexOf(1));
    for (const [at, level] of body.entries()) expect(level - (body[at - 1] ?? 1)).toBeLessThanOrEqual(1);
  });

  it('escapes what a shop writes', () => {
    const page = html({ ...toyFacts, shop: { ...toyFacts.shop, name: '<img src=x onerror="x()">' } });
    expect(page).not.toContain('<img');
    expect(page).toContain('&lt;img');
  });

  it('holds no inline style, script or address to fetch, so that it shows under a strict policy', () => {
    const page = twinPage(textOf(longFacts, toyWordsOf('de')), ['twin.css']);
    expect(page).not.toMatch(/ style=|<style|<script| on[a-z]+=/);
    expect(page.match(/(src|href)="([^"]*)"/g)).toEqual(['href="twin.css"']);
    expect(page).toContain('lang="de"');
  });

  it('turns round for a language from right to left: its styles name no left or right', () => {
    const page = twinOf({ ...textOf(toyFacts, toyWordsOf('en')), direction: 'rtl' });
    expect(page).toContain('dir="rtl"');
    expect(readFileSync('src/card/twin.css', 'utf8')).not.toMatch(/[\s-](left|right)\b(?! to left)(?=[^*]*[:;])/);
  });
});
