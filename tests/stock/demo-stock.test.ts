import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoStock } from '../../demo/demo-stock.ts';
import { AS_OF, SEED } from '../../demo/seed.ts';
import { NUMBER_ROWS } from '../../src/attributes/numbers.ts';
import { attribute } from '../../src/attributes/table.ts';
import { DROP_TOLERANCE } from '../../src/stock/check-shoe.ts';
import { boxesByShoe } from '../../src/stock/index-boxes.ts';
import { readStock } from '../../src/stock/read-csv.ts';
import type { Shoe } from '../../src/stock/shoe.ts';
import { stockTemplate } from '../../src/stock/template.ts';
import { available, isLastPair } from '../../src/stock/today.ts';
import { writeStock } from '../../src/stock/write-csv.ts';

const file = (name: string) => readFileSync(new URL(`../../demo/${name}`, import.meta.url), 'utf8');
const text = file('stock.csv');
const { value, findings } = readStock(text, { asOf: AS_OF });
if (!value) throw new Error('The demo stock does not load');
const { shoes, boxes } = value;
const byShoe = boxesByShoe(value);
const names = new Set(shoes.map((shoe) => shoe.name));
const of = (use: string) => shoes.filter((shoe) => shoe.use.includes(use));
const adult = (list: readonly Shoe[]) => list.filter((shoe) => shoe.shelf === 'men' || shoe.shelf === 'any');
const middle = (list: readonly Shoe[], key: keyof Shoe['numbers']): number => {
  const known = list.flatMap((shoe) => shoe.numbers[key] ?? []).toSorted((a, b) => a - b);
  return known[Math.floor(known.length / 2)] ?? Number.NaN;
};
const USES = ['road', 'trail', 'court', 'gym', 'lifting', 'hiking', 'walking', 'work'];
const sizeOf = (label: string | undefined) => {
  const [whole = 'NaN', third] = (label ?? '').split(' ');
  return Number(whole) + (third ? Number(third[0]) / 3 : 0);
};

describe('the invented shop’s stock', () => {
  test('is what its script makes, to the letter, and loads without a finding', () => {
    expect(writeStock(demoStock(SEED, AS_OF))).toBe(text);
    expect(stockTemplate()).toBe(file('template.csv'));
    expect(findings).toEqual([]);
  });

  test('holds the models its readme counts', () => {
    expect(names.size).toBeGreaterThanOrEqual(90);
    expect(file('README.md')).toContain(`${names.size} models in ${shoes.length} shelf versions`);
  });

  test('has men’s, women’s, junior models and models for any shelf in plenty', () => {
    const count = (shelf: Shoe['shelf']) => shoes.filter((shoe) => shoe.shelf === shelf).length;
    for (const shelf of ['men', 'women', 'any'] as const) expect(count(shelf), shelf).toBeGreaterThan(20);
    expect(count('junior')).toBeGreaterThanOrEqual(6);
  });

  test.each(USES)('finds a foot of any size from EU 36 to 47 several pairs for %s', (use) => {
    for (let eu = 36; eu <= 47; eu++) {
      const found = of(use).filter((shoe) =>
        (byShoe.get(shoe.id) ?? []).some((box) => available(box) > 0 && Math.abs(sizeOf(box.labels.eu) - eu) <= 0.5),
      );
      expect(found.length, `EU ${eu}`).toBeGreaterThanOrEqual(3);
    }
  });

  test('knows the drop of every model within 2 mm of its stacks', () => {
    for (const { id, numbers } of shoes) {
      const { 'heel-stack': heel = Number.NaN, 'forefoot-stack': fore = Number.NaN, drop = Number.NaN } = numbers;
      expect(Math.abs(heel - fore - drop), id).toBeLessThanOrEqual(DROP_TOLERANCE);
    }
  });

  test('weighs what such shoes weigh against each other', () => {
    const road = middle(adult(of('road')), 'mass');
    const mids = adult(of('hiking')).filter((shoe) => (shoe.numbers['collar-height'] ?? 0) >= 2);
    expect(mids.length).toBeGreaterThan(2);
    for (const shoe of mids) {
      expect(shoe.numbers.mass, shoe.id).toBeGreaterThan(
        Math.max(...adult(of('road')).map((one) => one.numbers.mass ?? 0)),
      );
    }
    expect(middle(adult(of('court')), 'mass')).toBeGreaterThan(road);
    expect(middle(adult(of('hiking')), 'mass')).toBeGreaterThan(middle(adult(of('trail')), 'mass'));
    const capped = adult(of('work')).filter((shoe) => shoe.lists['safety-marks']?.includes('toe-cap'));
    for (const shoe of capped) expect(shoe.numbers.mass, shoe.id).toBeGreaterThan(400);
  });

  test('gives each use its own figures', () => {
    const raised = of('lifting').filter((shoe) => (shoe.numbers.drop ?? 0) >= 15);
    expect(raised.length).toBeGreaterThanOrEqual(3);
    for (const shoe of raised) expect(shoe.numbers.cushion ?? 1, shoe.id).toBe(1);
    for (const shoe of of('court')) {
      expect(shoe.marks['non-marking'], shoe.id).toBe(true);
      expect(shoe.numbers['midfoot-hold'] ?? 5, shoe.id).toBeGreaterThanOrEqual(4);
    }
    expect(middle(of('court'), 'heel-stack')).toBeLessThan(middle(of('road'), 'heel-stack'));
    expect(middle(of('trail'), 'lug-depth')).toBeGreaterThan(middle(of('road'), 'lug-depth'));
    for (const shoe of of('work')) expect(shoe.lists['safety-marks'], shoe.id).toContain('slip');
  });

  test('spans every property that is judged by hand from one end to the other', () => {
    for (const row of NUMBER_ROWS) {
      if (row.kind !== 'ordinal') continue;
      const known = shoes.flatMap((shoe) => shoe.numbers[row.key] ?? []);
      expect([Math.min(...known), Math.max(...known)], row.key).toEqual(row.range);
    }
  });

  test('lacks about a third of the figures that are rarely published, and none of the others', () => {
    const missing = (rare: boolean) => {
      const keys = NUMBER_ROWS.filter((row) => row.rare === rare).map((row) => row.key);
      const gaps = shoes.flatMap((shoe) => keys.filter((key) => shoe.numbers[key] === undefined));
      return gaps.length / (keys.length * shoes.length);
    };
    expect(missing(true)).toBeGreaterThan(0.3);
    expect(missing(true)).toBeLessThan(0.37);
    expect(missing(false)).toBe(0);
  });

  test('has two near-twins: the same to the foot, a little different on the scales and at the till', () => {
    const one = shoes.find((shoe) => shoe.name === 'Cindermoor');
    const two = shoes.find((shoe) => shoe.name === 'Cindermoor Two' && shoe.shelf === one?.shelf);
    for (const row of NUMBER_ROWS) {
      const [a, b] = [one?.numbers[row.key], two?.numbers[row.key]];
      if (a === undefined || b === undefined || row.key === 'price') continue;
      expect(Math.abs(a - b), row.key).toBeLessThan(attribute(row.key).step);
    }
    expect(two?.numbers.price).toBeGreaterThan(one?.numbers.price ?? Number.POSITIVE_INFINITY);
  });

  test('runs out of sizes and down to last pairs, as shops do', () => {
    const share = (holds: (box: (typeof boxes)[number]) => boolean) => boxes.filter(holds).length / boxes.length;
    expect(share((box) => available(box) === 0)).toBeGreaterThan(0.1);
    expect(share((box) => available(box) === 0)).toBeLessThan(0.4);
    expect(share(isLastPair)).toBeGreaterThan(0.15);
    expect(boxes.some((box) => box.reserved > 0)).toBe(true);
  });

  test('prints labels on its boxes that do not convert into each other', () => {
    const overUk = new Set(
      boxes.flatMap(({ labels }) =>
        labels['us-men'] && labels.uk ? Number(labels['us-men']) - Number(labels.uk) : [],
      ),
    );
    expect(overUk.size).toBeGreaterThan(1);
    const euOfOneUk = new Set(boxes.filter(({ labels }) => labels.uk === '7.5').map(({ labels }) => labels.eu));
    expect(euOfOneUk.size).toBeGreaterThan(2);
    const severalLabels = boxes.filter(({ labels }) => Object.keys(labels).length >= 3);
    expect(severalLabels.length / boxes.length).toBeGreaterThan(0.8);
  });

  test('says in the shop’s file that it is invented', () => {
    const shop = JSON.parse(file('shop.json')) as {
      readonly name: string;
      readonly logo: string;
      readonly kit: readonly string[];
    };
    expect(shop.name).toContain('Invented');
    expect(file(shop.logo)).toContain('<svg');
    expect(shop.kit).toEqual(['ramp', 'mat', 'rope', 'box', 'treadmill']);
  });
});
