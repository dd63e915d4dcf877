import { expect, it } from 'vitest';
import { measureOf } from '../../src/card/font/metrics.ts';
import { unprintableInStock } from '../../src/card/unprintable-stock.ts';
import { fontsOnDisk } from '../../src/command-line/fonts-on-disk.ts';
import { loadStock } from '../../src/command-line/load.ts';

const measure = measureOf(fontsOnDisk());
const { stock } = loadStock('demo/stock.csv', '2026-11-25T09:00:00');
const named = (name: string) =>
  unprintableInStock({ ...stock, shoes: stock.shoes.slice(0, 1).map((shoe) => ({ ...shoe, name })) }, measure);

it('a model whose name no card can print is told when the list is loaded', () => {
  expect(named('Fern 👟 木 Fell')).toEqual([
    { code: 'stock-unprintable', severity: 'note', data: { characters: '👟 木', mark: '◊' } },
  ]);
  expect(named('Fernfell Größe Œuvre')).toEqual([]);
});

it('every name and shelf of the demo shop prints', () => {
  expect(unprintableInStock(stock, measure)).toEqual([]);
});
