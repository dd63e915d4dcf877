import type { AttributeKey } from '../src/attributes/attributes.ts';
import type { Shoe } from '../src/stock/shoe.ts';

/** Kinds of shoe the invented shop stocks, in round invented figures (EU 42). `drop` follows from the two stacks. */
export type Figures = Readonly<Record<Exclude<AttributeKey, 'drop'>, number>>;
export interface Archetype {
  readonly use: readonly string[];
  readonly figures: Figures;
  readonly marks: Shoe['marks'];
  readonly lists: Shoe['lists'];
  /** First letter of where it stands. */
  readonly rack: string;
}

type Row = readonly [
  mass: number,
  heel: number,
  fore: number,
  cushion: number,
  rebound: number,
  bend: number,
  stiffness: number,
  rocker: number,
  twist: number,
  counter: number,
  support: number,
  platform: number,
  hold: number,
  shape: number,
  depth: number,
  instep: number,
  collar: number,
  lugs: number,
  price: number,
];

const figures = (row: Row): Figures => ({
  mass: row[0],
  'heel-stack': row[1],
  'forefoot-stack': row[2],
  cushion: row[3],
  rebound: row[4],
  bend: row[5],
  'forefoot-stiffness': row[6],
  rocker: row[7],
  twist: row[8],
  'heel-counter': row[9],
  'medial-support': row[10],
  'platform-width': row[11],
  'midfoot-hold': row[12],
  'toe-box-shape': row[13],
  'toe-box-depth': row[14],
  'instep-volume': row[15],
  'collar-height': row[16],
  'lug-depth': row[17],
  price: row[18],
});

const kind =
  (use: string, rack: string, marks: Shoe['marks'], lists: Shoe['lists']) =>
  (...row: Row): Archetype => ({ use: use.split(' '), rack, marks, lists, figures: figures(row) });

const laced = { closure: ['laces'] };
const road = kind(
  'road',
  'A',
  { 'non-marking': false, 'removable-insole': true, 'closed-heel': true },
  { ...laced, tread: ['shallow'], materials: ['mesh', 'synthetic'] },
);
const trail = kind(
  'trail',
  'B',
  { 'non-marking': false, 'removable-insole': true, 'quick-drying': true, 'closed-heel': true },
  { ...laced, tread: ['lugs'], materials: ['mesh', 'synthetic'] },
);
const court = kind(
  'court',
  'C',
  { 'non-marking': true, 'removable-insole': true, 'closed-heel': true },
  { ...laced, tread: ['herringbone'], materials: ['mesh', 'synthetic'] },
);
const gym = kind(
  'gym',
  'D',
  { 'non-marking': true, 'removable-insole': true, 'closed-heel': true },
  { ...laced, tread: ['shallow'], materials: ['mesh', 'synthetic'] },
);
const lifting = kind(
  'gym lifting',
  'D',
  { 'non-marking': true, 'removable-insole': true, 'closed-heel': true },
  { closure: ['laces', 'strap'], tread: ['smooth'], materials: ['synthetic'] },
);
const hiking = kind(
  'hiking',
  'E',
  { 'non-marking': false, 'removable-insole': true, 'closed-heel': true },
  { ...laced, tread: ['deep-lugs'], materials: ['leather', 'synthetic'] },
);
const walking = kind(
  'walking',
  'F',
  { 'removable-insole': true, 'closed-heel': true },
  { ...laced, tread: ['shallow'], materials: ['mesh', 'synthetic'] },
);
const work = kind(
  'work',
  'G',
  { 'non-marking': true, 'removable-insole': true, washable: true, 'closed-heel': true },
  { closure: ['pull-on'], tread: ['fine-grooves'], 'safety-marks': ['slip'], materials: ['synthetic'] },
);
const safety = kind(
  'work',
  'G',
  { 'non-marking': true, 'removable-insole': true, 'closed-heel': true },
  {
    ...laced,
    tread: ['fine-grooves'],
    'safety-marks': ['slip', 'toe-cap', 'antistatic'],
    materials: ['leather', 'synthetic'],
  },
);

/* Columns: mass, heel, fore | cushion, rebound | bend, stiffness, rocker, twist | counter, support, platform, hold | toe shape, depth, instep | collar, lugs, price */
export const ARCHETYPES = {
  daily: road(285, 34, 24, 4, 3, 3, 3, 1, 3, 3, 0, 108, 3, 2, 2, 2, 1, 1, 130),
  'tall-soft': road(300, 40, 34, 5, 4, 2, 4, 2, 2, 3, 0, 116, 3, 2, 2, 2, 1, 1, 160),
  light: road(225, 32, 25, 3, 4, 4, 3, 1, 4, 2, 0, 100, 4, 1, 1, 2, 1, 1, 125),
  plated: road(205, 38, 31, 4, 5, 1, 5, 2, 2, 2, 0, 105, 4, 1, 1, 1, 1, 1, 200),
  firm: road(240, 22, 18, 2, 2, 4, 2, 0, 4, 2, 0, 98, 3, 2, 2, 2, 1, 1, 95),
  support: road(310, 35, 25, 3, 3, 2, 3, 1, 2, 4, 2, 112, 4, 2, 2, 2, 1, 1, 140),
  'some-support': road(290, 34, 26, 4, 3, 3, 3, 1, 2, 4, 1, 112, 3, 2, 2, 2, 1, 1, 135),
  roomy: road(265, 26, 25, 3, 3, 4, 2, 0, 4, 2, 0, 110, 3, 3, 3, 2, 1, 1, 120),
  plain: road(275, 30, 20, 3, 2, 3, 3, 0, 3, 3, 0, 104, 3, 2, 2, 2, 1, 1, 58),
  track: road(180, 19, 15, 2, 4, 3, 4, 0, 3, 2, 0, 92, 5, 1, 1, 1, 1, 1, 110),

  'easy-trail': trail(290, 31, 24, 3, 3, 3, 3, 1, 2, 4, 0, 110, 4, 2, 2, 2, 1, 4, 130),
  rocky: trail(325, 30, 22, 3, 3, 2, 4, 1, 2, 4, 1, 112, 4, 2, 2, 2, 1, 4.5, 145),
  fell: trail(245, 21, 16, 2, 3, 5, 2, 0, 3, 3, 0, 100, 5, 1, 1, 1, 1, 7, 125),
  'long-trail': trail(310, 38, 33, 5, 4, 2, 4, 2, 2, 3, 0, 118, 3, 2, 2, 2, 1, 3.5, 160),
  'low-trail': trail(265, 21, 20, 2, 3, 4, 2, 0, 4, 2, 0, 104, 4, 3, 2, 2, 1, 4, 120),

  'court-mid': court(360, 26, 20, 3, 4, 4, 3, 0, 2, 4, 0, 116, 5, 2, 2, 2, 2, 0, 125),
  'court-high': court(410, 29, 22, 4, 4, 3, 4, 0, 1, 5, 1, 118, 5, 2, 2, 2, 3, 0, 140),
  netball: court(320, 25, 19, 3, 4, 4, 2, 0, 2, 4, 1, 114, 5, 2, 2, 2, 1, 0, 115),
  volley: court(310, 26, 18, 4, 4, 3, 3, 0, 2, 3, 0, 110, 4, 2, 2, 2, 1, 0, 110),
  handball: court(335, 24, 17, 3, 3, 3, 3, 0, 2, 4, 1, 112, 5, 2, 2, 2, 1, 0, 105),
  tennis: court(370, 27, 19, 3, 3, 2, 4, 0, 1, 5, 1, 117, 5, 2, 2, 2, 1, 1, 130),
  padel: court(345, 26, 18, 3, 3, 3, 3, 0, 2, 4, 1, 114, 4, 2, 2, 2, 1, 2, 120),
  badminton: court(290, 21, 15, 3, 4, 4, 2, 0, 3, 3, 0, 106, 5, 2, 2, 2, 1, 0, 100),
  squash: court(315, 22, 15, 2, 3, 3, 3, 0, 2, 4, 0, 108, 5, 2, 2, 2, 1, 0, 90),
  'table-tennis': court(245, 16, 12, 2, 3, 5, 2, 0, 4, 2, 0, 100, 4, 1, 1, 2, 1, 0, 85),

  'raised-heel': lifting(440, 30, 12, 1, 2, 2, 4, 0, 1, 5, 0, 106, 5, 2, 2, 2, 1, 0, 150),
  'flat-lift': lifting(330, 11, 11, 1, 1, 3, 3, 0, 2, 3, 0, 108, 4, 3, 2, 2, 2, 0, 90),
  circuit: gym(305, 22, 18, 2, 3, 3, 3, 0, 2, 4, 0, 110, 4, 2, 2, 2, 1, 1, 115),
  'gym-class': gym(255, 25, 18, 3, 3, 4, 2, 0, 3, 2, 0, 104, 3, 2, 2, 2, 1, 1, 80),
  bounce: gym(250, 24, 18, 3, 5, 4, 2, 0, 2, 3, 0, 106, 5, 2, 2, 2, 1, 0, 105),
  dance: gym(235, 21, 15, 3, 3, 5, 1, 0, 5, 2, 0, 100, 4, 2, 2, 2, 1, 0, 95),
  rowing: gym(230, 14, 11, 1, 2, 5, 1, 0, 3, 3, 0, 100, 4, 2, 2, 2, 1, 0, 70),
  spin: gym(290, 18, 14, 1, 2, 1, 5, 0, 1, 4, 0, 98, 5, 1, 2, 2, 1, 0, 100),
  thin: gym(170, 8, 8, 1, 1, 5, 1, 0, 5, 1, 0, 102, 3, 3, 3, 2, 1, 1, 90),
  grip: gym(285, 15, 12, 2, 3, 4, 2, 0, 3, 3, 0, 104, 5, 2, 1, 2, 1, 0, 98),

  'hike-low': hiking(395, 30, 20, 3, 2, 2, 4, 1, 1, 4, 1, 110, 4, 2, 2, 2, 1, 4.5, 150),
  'hike-light': hiking(340, 31, 23, 4, 3, 3, 3, 1, 2, 3, 0, 110, 4, 2, 2, 2, 1, 4, 135),
  'hike-mid': hiking(520, 33, 22, 3, 2, 2, 4, 1, 1, 5, 1, 114, 4, 2, 3, 2, 2, 5, 180),
  'hike-high': hiking(660, 36, 23, 2, 1, 1, 5, 1, 1, 5, 1, 116, 5, 2, 3, 3, 3, 5.5, 230),

  everyday: walking(300, 28, 20, 4, 2, 3, 2, 1, 3, 3, 0, 108, 3, 2, 2, 2, 1, 1, 90),
  brisk: walking(260, 27, 20, 3, 3, 4, 2, 1, 3, 3, 0, 104, 3, 2, 2, 2, 1, 1, 85),
  'wide-walk': walking(330, 29, 22, 4, 2, 3, 3, 1, 2, 4, 1, 116, 3, 3, 3, 3, 1, 1, 110),
  'easy-on': walking(255, 25, 18, 4, 2, 4, 2, 0, 4, 2, 0, 104, 2, 2, 2, 2, 1, 1, 70),
  'rocker-walk': walking(340, 36, 30, 4, 3, 1, 5, 2, 1, 3, 0, 114, 3, 2, 2, 2, 1, 1, 140),
  'poles-walk': walking(320, 28, 20, 3, 2, 3, 3, 1, 2, 4, 0, 108, 4, 2, 2, 2, 1, 3, 115),

  ward: work(290, 28, 20, 4, 2, 3, 3, 1, 3, 3, 0, 110, 3, 2, 2, 2, 1, 1, 85),
  galley: work(355, 30, 20, 3, 2, 2, 3, 1, 2, 4, 0, 112, 3, 2, 3, 3, 1, 2, 80),
  'long-stand': work(320, 32, 24, 4, 3, 2, 4, 1, 2, 4, 1, 114, 3, 2, 2, 2, 1, 1, 115),
  'safety-low': safety(460, 30, 22, 3, 2, 2, 4, 0, 1, 5, 1, 112, 4, 2, 3, 2, 1, 3, 105),
  'safety-boot': safety(640, 33, 22, 2, 1, 1, 5, 0, 1, 5, 1, 116, 4, 2, 3, 3, 3, 4, 130),
} satisfies Record<string, Archetype>;
export type ArchetypeName = keyof typeof ARCHETYPES;
