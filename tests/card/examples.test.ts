import { describe, expect, it } from 'vitest';
import { fittersFormat } from '../../src/card/fitters-format.ts';
import { printable } from '../../src/card/font/printable.ts';
import { labelSystem } from '../../src/card/label-system.ts';
import { codePiece } from '../../src/card/layout/blocks/code.ts';
import { wrap } from '../../src/card/layout/wrap.ts';
import { inBlack, readLogo } from '../../src/card/logo.ts';
import { letterOf } from '../../src/card/pairs.ts';
import { place } from '../../src/card/strips.ts';
import { simpleShare } from '../../src/card/text/ease-in-text.ts';
import { measure } from './toy-card.ts';

describe('the examples beside the card’s functions', () => {
  it('wrap', () => {
    expect(wrap('ab cd', (line) => line.length, 3)).toEqual(['ab', 'cd']);
    expect(wrap('abcdef', (line) => line.length, 4)).toEqual(['abcd', 'ef']);
  });
  it('printable', () => {
    expect(printable('Fern & Fell 👟', measure)).toEqual({ text: 'Fern & Fell ◊', missing: ['👟'] });
  });
  it('fittersFormat', () => {
    expect(fittersFormat('letter')).toBe('letter');
    for (const format of ['a5', 'a5-two-up', 'a4', 'roll80', 'our-own']) expect(fittersFormat(format)).toBe('a4');
  });
  it('labelSystem', () => {
    expect(labelSystem({ answers: { 'now-size': { value: 6.5, unit: 'uk' } } })).toBe('uk');
    expect(labelSystem({ answers: { 'now-size': { value: 265, unit: 'mm' } } })).toBe('mondopoint');
    expect(labelSystem({ answers: { 'now-size': 'not-sure' } })).toBe('eu');
  });
  it('place', () => {
    expect(place('cushion', 3)).toBe(0.5);
  });
  it('simpleShare', () => {
    expect(simpleShare(0.25)).toEqual({ some: 1, of: 4 });
    expect(simpleShare(0.3)).toEqual({ some: 3, of: 10 });
    expect(simpleShare(1)).toEqual({ some: 1, of: 1 });
  });
  it('codePiece', () => {
    expect(codePiece('LW1', 40, { module: 0.6, least: 0.5 }).height).toBeCloseTo(17.4);
  });
  it('inBlack', () => {
    expect(inBlack('<path fill="#d02020" stroke="none"/>')).toBe('<path fill="#000000" stroke="none"/>');
    expect(inBlack(`<path fill='#fff' stroke='#FAFAFA'/>`)).toBe('<path fill="#ffffff" stroke="#ffffff"/>');
  });
  it('readLogo', () => {
    expect(readLogo('<svg viewBox="0 0 1 1"><path d="M0 0h1"/></svg>', 'logo.svg').findings).toEqual([]);
    expect(readLogo('<svg viewBox="0 0 1 1" onload="x()"/>', 'logo.svg').findings[0]?.code).toBe('logo-unsafe');
  });
});

describe('a line of text', () => {
  const wide = (line: string) => line.length;
  it('breaks at a soft hyphen with a hyphen shown, and never shows one that is not needed', () => {
    expect(wrap('Fersen\u00adkappe', wide, 8)).toEqual(['Fersen-', 'kappe']);
    expect(wrap('Fersen\u00adkappe', wide, 20)).toEqual(['Fersenkappe']);
  });
  it('keeps a no-break space together', () => {
    expect(wrap('ab 27\u00a0cm', wide, 6)).toEqual(['ab', '27\u00a0cm']);
  });
  it('is nothing for nothing', () => {
    expect(wrap('  ', wide, 5)).toEqual([]);
  });
});

describe('the letters of pairs', () => {
  it('go on after Z', () => {
    expect([0, 25, 26, 27].map(letterOf)).toEqual(['A', 'Z', 'AA', 'AB']);
  });
});
