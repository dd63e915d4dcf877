import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';
import type { AttributeKey } from '../src/attributes/attributes.ts';
import { NUMBER_ROWS } from '../src/attributes/numbers.ts';
import type { Box, Shelf, Shoe, Stock } from '../src/stock/shoe.ts';
import { ARCHETYPES, type Archetype, type Figures } from './archetypes.ts';
import { boxesFor, LABEL_HABITS } from './boxes.ts';
import { MEASURED, MODELS, type Model } from './models.ts';

type Numbers = Record<AttributeKey, number>;

/** Of a hundred rarely published figures, how many nobody recorded, where the shop did not measure all: a third of all models' in the end. */
const GAPS = 55;
/** How soft a sole is takes a thumb and a moment, so it is seldom missing. */
const GAPS_BY_THUMB = 15;

/** Judged figures that vary a little within a kind; the others are what makes the kind. */
const VARIES: readonly AttributeKey[] = ['rebound', 'twist', 'heel-counter', 'toe-box-depth', 'instep-volume'];
const RARE = NUMBER_ROWS.filter((row) => row.rare);
/** What a model's women's and junior versions weigh against EU 42, and the size that was weighed. Invented. */
const WEIGHED: Readonly<Record<Shelf, readonly [number, string]>> = {
  men: [1, 'eu 42'],
  any: [1, 'eu 42'],
  women: [0.84, 'eu 38'],
  junior: [0.66, 'eu 34'],
};

/** The invented shop's stock: the same for the same seed, on every machine. */
export function demoStock(seed: number, asOf: string): Stock {
  const random = xoroshiro128plus(seed);
  const shoes: Shoe[] = [];
  const boxes: Box[] = [];
  const made = new Map<string, Numbers>();
  for (const model of MODELS) {
    const kind: Archetype = ARCHETYPES[model.kind];
    const twin = model.twinOf === undefined ? undefined : made.get(model.twinOf);
    const numbers = twin ? shifted(twin, model.differs ?? {}) : varied({ ...kind.figures, ...model.differs }, random);
    made.set(model.name, numbers);
    // What sets a model apart from its kind was measured, so it is on record.
    const unknown = RARE.filter(
      ({ key }) =>
        uniformInt(random, 1, 100) <= (key === 'cushion' ? GAPS_BY_THUMB : GAPS) &&
        !MEASURED.includes(model.name) &&
        !(key in (model.differs ?? {})),
    ).map((row) => row.key);
    const maker = pick(LABEL_HABITS, random);
    const offset = pick([-4, 0, 0, 0, 0, 3], random);
    const [saysOffset, saysInnerLength] = [uniformInt(random, 1, 2) === 1, uniformInt(random, 1, 5) <= 3];
    for (const shelf of model.shelves) {
      const shoe = shoeOf(model, kind, shelf, numbers, unknown, saysOffset ? offset : undefined);
      shoes.push(shoe);
      boxes.push(
        ...boxesFor(
          { id: shoe.id, shelf, rack: kind.rack, widths: shoe.lists.widths ?? [] },
          maker,
          offset,
          saysInnerLength,
          random,
        ),
      );
    }
  }
  return { shoes, boxes, asOf };
}

function shoeOf(
  model: Model,
  kind: Archetype,
  shelf: Shelf,
  all: Numbers,
  unknown: readonly AttributeKey[],
  offset: number | undefined,
): Shoe {
  const [share, massSize] = WEIGHED[shelf];
  const own = { ...all, mass: Math.round((all.mass * share) / 5) * 5 };
  if (shelf === 'junior') own.price = Math.round(own.price * 0.55);
  const numbers = Object.fromEntries(Object.entries(own).filter(([key]) => !unknown.includes(key as AttributeKey)));
  const plain = model.name.toLowerCase().replace(' ', '-');
  return {
    id: model.shelves.length > 1 ? `${plain}-${shelf}` : plain,
    name: model.name,
    use: kind.use,
    shelf,
    numbers,
    marks: { ...kind.marks, ...model.marks },
    lists: { ...kind.lists, colour: model.colour, ...model.lists },
    massSize,
    ...(offset === undefined ? {} : { sizeOffset: offset }),
  };
}

/** A kind's figures, a little off: the drop as stated is up to 1 mm from the stacks, as nominal drops are. */
function varied(figures: Figures, random: RandomGenerator): Numbers {
  const off = (most: number) => uniformInt(random, -most, most);
  const lift = off(1);
  const fore = figures['forefoot-stack'] + lift;
  const heel = figures['heel-stack'] + lift;
  const numbers: Numbers = {
    ...figures,
    mass: figures.mass + off(2) * 5,
    'heel-stack': heel,
    'forefoot-stack': fore,
    drop: Math.max(0, heel - fore + (heel === fore ? 0 : off(1))),
    'platform-width': figures['platform-width'] + off(2),
    price: figures.price + off(1) * 5,
  };
  for (const key of VARIES) {
    const row = RARE.find((one) => one.key === key);
    if (!row || uniformInt(random, 1, 5) > 1) continue;
    numbers[key] = Math.min(row.range[1], Math.max(row.range[0], numbers[key] + pick([-1, 1], random)));
  }
  return numbers;
}

const shifted = (numbers: Numbers, by: Partial<Figures>): Numbers => {
  const twin = { ...numbers };
  for (const [key, difference] of Object.entries(by)) twin[key as AttributeKey] += difference;
  return twin;
};

function pick<T>(from: readonly T[], random: RandomGenerator): T {
  return from[uniformInt(random, 0, from.length - 1)] as T;
}
