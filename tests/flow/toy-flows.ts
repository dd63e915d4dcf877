import type { Answer } from '../../src/flow/answers.ts';
import type { Flow, Question } from '../../src/flow/format.ts';
import type { Tables } from '../../src/flow/options.ts';

/** Invented flows, small enough to try every answer. None is a shop's. */
export const toyFlow = (id: string, ...sections: readonly (readonly Question[])[]): Flow => ({
  id,
  version: 1,
  languages: ['en'],
  bounds: { longest: 9, shortWays: [], typical: { story: 'nobody', screens: 9 } },
  sections: sections.map((questions, i) => ({ id: `part-${i + 1}`, questions })),
});

export const TOY_TABLES: Tables = {
  activities: [{ id: 'kite-flying', group: 'sky' }],
  floors: [{ id: 'moss', group: 'outdoor' }],
  'shoe-kinds': [{ id: 'clogs', group: 'wood' }],
};

/** A fork, an option that stands alone, an option that only some are offered. */
export const PICNIC = toyFlow(
  'picnic',
  [
    { id: 'weather', kind: 'one-of', options: [{ id: 'sun' }, { id: 'rain' }, { id: 'wind' }] },
    {
      id: 'basket',
      kind: 'some-of',
      options: [
        { id: 'cake' },
        { id: 'soup', showWhen: { of: 'weather', is: 'rain' } },
        { id: 'kite', showWhen: { of: 'weather', is: 'wind' } },
        { id: 'none', alone: true },
      ],
    },
  ],
  [
    { id: 'umbrella', kind: 'yes-no', askWhen: { of: 'weather', is: 'rain' } },
    { id: 'spoon', kind: 'yes-no', askWhen: { of: 'basket', includes: 'soup' } },
    {
      id: 'shared',
      kind: 'some-of',
      most: 2,
      askWhen: { any: [{ of: 'basket', includes: 'cake' }, { not: { of: 'umbrella', is: 'yes' } }] },
      options: [{ id: 'ann' }, { id: 'bo' }, { id: 'cy' }],
    },
  ],
);

/** A number that a threshold splits, shares, a table with something extra. */
export const POND = toyFlow('pond', [
  { id: 'play', kind: 'one-of', options: { table: 'activities' }, extra: [{ id: 'something-else' }] },
  {
    id: 'depth',
    kind: 'number',
    notSure: true,
    units: [
      { id: 'cm', from: 0, to: 100 },
      { id: 'feet', from: 0, to: 3 },
    ],
  },
  {
    id: 'bank',
    kind: 'shares',
    options: { table: 'floors' },
    extra: [{ id: 'reeds' }, { id: 'not-sure', alone: true }],
  },
  {
    id: 'boots',
    kind: 'yes-no',
    askWhen: {
      all: [
        { of: 'depth', atLeast: 20 },
        { of: 'depth', upTo: 60 },
      ],
    },
  },
  {
    id: 'guide',
    kind: 'one-of',
    askWhen: { of: 'bank', includes: 'reeds' },
    options: [{ id: 'map' }, { id: 'friend' }],
  },
]);

/** A body map, likings against today, signs; a question hidden behind one that is itself hidden. */
export const KENNEL = toyFlow(
  'kennel',
  [
    {
      id: 'itch',
      kind: 'body-map',
      regions: [{ id: 'paw', view: 'foot' }],
    },
    {
      id: 'vet',
      kind: 'signs',
      askWhen: { of: 'itch', includes: 'paw' },
      options: [{ id: 'limps' }, { id: 'none', alone: true }],
    },
  ],
  [
    {
      id: 'collar',
      kind: 'against-today',
      askWhen: { not: { of: 'itch', anyOf: ['skipped', 'rather-not-say'] } },
      properties: [{ id: 'width', choices: ['wider', 'narrower'] }],
    },
    {
      id: 'walk',
      kind: 'one-of',
      options: [{ id: 'far' }, { id: 'near' }],
      askWhen: { all: [{ answered: 'vet' }, { of: 'collar', includes: 'width' }] },
    },
  ],
);

/** Likings of which one may be left open: what is asked next depends on whether anything at all is wished. */
export const TEAPOT = toyFlow('teapot', [
  {
    id: 'taste',
    kind: 'against-today',
    properties: [
      { id: 'strength', choices: ['stronger', 'weaker', 'open'] },
      { id: 'heat', choices: ['hotter', 'open'] },
      { id: 'lid', choices: ['open', 'shut'] },
    ],
  },
  {
    id: 'first',
    kind: 'one-of',
    askWhen: { of: 'taste', anyBut: 'open' },
    options: [{ id: 'strength' }, { id: 'heat' }],
  },
  {
    id: 'stir',
    kind: 'yes-no',
    askWhen: { all: [{ of: 'taste', includes: 'heat' }, { not: { of: 'taste', anyBut: 'hotter' } }] },
  },
  {
    id: 'lift',
    kind: 'yes-no',
    askWhen: {
      all: [
        { of: 'taste', anyBut: 'shut' },
        { of: 'taste', anyBut: 'open' },
      ],
    },
  },
]);

/** Sets of which any one will do: overlapping, one with an option that is read alone, one with what stands alone. */
export const ORCHARD = toyFlow('orchard', [
  {
    id: 'fruit',
    kind: 'some-of',
    most: 2,
    options: [{ id: 'pear' }, { id: 'plum' }, { id: 'fig' }, { id: 'none', alone: true }],
  },
  { id: 'ladder', kind: 'yes-no', askWhen: { of: 'fruit', includesAny: ['pear', 'plum'] } },
  { id: 'jar', kind: 'yes-no', askWhen: { not: { of: 'fruit', includesAny: ['plum', 'fig', 'none'] } } },
  { id: 'scarf', kind: 'yes-no', askWhen: { of: 'fruit', includes: 'pear' } },
]);

/** The same of shares, and of a body map. Flows of their own: tried together, every answer would take minutes. */
export const SHED = toyFlow('shed', [
  {
    id: 'ground',
    kind: 'shares',
    options: [{ id: 'clover' }, { id: 'stones' }, { id: 'not-sure', alone: true }],
  },
  { id: 'wellingtons', kind: 'yes-no', askWhen: { of: 'ground', includesAny: ['clover', 'not-sure'] } },
]);

export const BENCH = toyFlow('bench', [
  {
    id: 'stool',
    kind: 'body-map',
    regions: [
      { id: 'leg', view: 'front' },
      { id: 'seat', view: 'back' },
    ],
  },
  { id: 'glue', kind: 'yes-no', askWhen: { of: 'stool', includesAny: ['leg', 'seat'] } },
]);

/** A row of a table that only some are offered. */
export const MEADOW = toyFlow('meadow', [
  { id: 'breeze', kind: 'yes-no' },
  {
    id: 'game',
    kind: 'one-of',
    noteWhen: { of: 'breeze', is: 'no' },
    options: { table: 'activities', rowsWhen: [{ rows: ['kite-flying'], when: { of: 'breeze', is: 'yes' } }] },
    extra: [{ id: 'tag' }],
  },
  { id: 'string', kind: 'yes-no', askWhen: { of: 'game', is: 'kite-flying' } },
]);

export const TOYS: readonly Flow[] = [PICNIC, POND, KENNEL, TEAPOT, ORCHARD, SHED, BENCH, MEADOW];

/** One value of each sort that the conditions of POND tell apart: below, between and above its thresholds 20 and 60. */
export const TOY_NUMBERS: Readonly<Record<string, readonly Answer[]>> = {
  depth: [
    { value: 5, unit: 'cm' },
    { value: 40, unit: 'cm' },
    { value: 90, unit: 'cm' },
    { value: 2, unit: 'feet' },
    'not-sure',
  ],
};
