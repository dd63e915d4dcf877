import { readFileSync } from 'node:fs';
import type { CardFacts, CardPair } from '../../src/card/card.ts';
import { drawCard } from '../../src/card/draw-card.ts';
import type { FontBytes } from '../../src/card/font/metrics.ts';
import { measureOf } from '../../src/card/font/metrics.ts';
import type { Template } from '../../src/card/template.ts';
import type { Words } from '../../src/words/words.ts';
import { wordsOf } from '../../src/words/words-of.ts';

/** Invented facts of one card, to lay out and draw. No real shop, shoe or person. */
const read = (path: string) => JSON.parse(readFileSync(path, 'utf8'));

export const toyTemplate = (id: string): Template => read(`print-templates/${id}/template.json`);

const fontAt = (weight: string) =>
  new Uint8Array(
    readFileSync(
      `node_modules/@expo-google-fonts/atkinson-hyperlegible-next/${weight}/AtkinsonHyperlegibleNext_${weight}.ttf`,
    ),
  );
export const fonts: FontBytes = { regular: fontAt('400Regular'), bold: fontAt('700Bold') };
export const measure = measureOf(fonts);

const toyWords = {
  reason: {
    steady: 'steady side to side',
    holds: 'holds the middle of the foot',
    springs: 'springs back',
    soft: 'softest under the ball',
  },
  misgiving: {
    heavy: 'a little heavier than you like',
    tall: 'taller, so less steady',
    narrow: 'narrower at the toes',
  },
  part: { closest: 'closest to your answers', lighter: 'lighter', softer: 'softer, to compare' },
  easeIn: { 'lower-drop': 'The heel is lower than on your shoe today.', plate: 'The sole is stiff at the front.' },
  task: {
    stand: { name: 'Stand still', feel: 'Room in front of the toes? Heel held?' },
    walk: { name: 'Walk ten slow steps', feel: 'Does the heel lift? Does it bend where you bend?' },
    hop: { name: 'Ten small bounces', feel: 'Do you land steady? Does your foot slide inside?' },
  },
  caution: {
    stop: { text: 'If something hurts, stop and rest. If it still hurts after a week, see a clinician.' },
    calf: { text: 'One calf is hot, red and swollen: call now, more so if you are short of breath.' },
    wound: { text: 'A sore that does not heal: see a doctor today.' },
    numb: { text: 'Numb feet: ask a doctor before you choose shoes.' },
    change: { text: 'A new shoe can make other parts work harder. Start with a little.' },
    brace: {
      text: 'After a sprain, a brace and balance training help more than a tall collar. Ask a physiotherapist.',
    },
    dry: { text: 'Let them dry in the air, away from heat.' },
    sole: { text: 'When the sole is smooth or leans to one side, it is time for a new pair.' },
  },
  advice: { sock: { text: 'A thinner sock may stop the rubbing.' } },
  'other-footwear': { studs: { text: 'Look for boots with studs for grass.' } },
  rule: { bounce: { why: 'Bouncing work asks for spring.' } },
  question: { activity: { ask: 'What will you mostly do in them?' }, floors: { ask: 'Where?' } },
};

export const toyWordsOf = (language: 'en' | 'de'): Words =>
  wordsOf(language, [read(`flows/words/${language}/card.json`), toyWords]);

const pair = (letter: string, name: string, rest: Partial<CardPair>): CardPair => ({
  letter,
  shoe: name.toLowerCase(),
  name,
  part: 'closest',
  lastPair: false,
  boxes: [
    {
      labels: [
        { system: 'eu', label: '42 2/3' },
        { system: 'uk', label: '8.5' },
        { system: 'cm', label: '27' },
      ],
      place: 'C4',
    },
  ],
  reasons: [{ code: 'steady' }, { code: 'holds' }],
  misgivings: [{ code: 'heavy' }],
  unknown: [],
  easeIn: null,
  ...rest,
});

/** A line-up of one pair with these boxes to fetch. */
export const pairsWith = (boxes: CardPair['boxes']): CardFacts['lineUps'] => [
  { for: 'all', sureness: 'none', pairs: [pair('A', 'Toy Sandpiper', { boxes })], ifDropped: [] },
];

export const toyFacts: CardFacts = {
  copy: 'customer',
  outcome: 'shortlist',
  shop: {
    name: 'Fern & Fell Toy Shop',
    address: ['3 Nowhere Lane', 'Toytown'],
    openingLine: 'Tuesday to Saturday, 10 to 6',
    currency: 'EUR',
    kit: ['mat'],
    language: 'en',
    languages: ['en', 'de'],
    emergencyNumber: '112',
    cardFormat: 'a5',
  },
  date: '2026-11-25',
  ticket: 'maple 14',
  stockAsOf: '2026-11-25T09:12:00',
  code: 'https://fit.example/#LW1.AbCdEfGhIjKlMnOpQrStUvWxYz0123456789AbCdEfGhIjKlMnOpQrStUvWxYz0123456789AbCd',
  lineUps: [
    {
      for: 'all',
      sureness: 'feet-decide',
      pairs: [
        pair('A', 'Toy Sandpiper', {}),
        pair('B', 'Toy Millrace', {
          part: 'lighter',
          reasons: [{ code: 'springs' }],
          misgivings: [{ code: 'narrow' }],
          easeIn: {
            triggers: ['lower-drop'],
            unit: 'sessions',
            weeks: [0.1, 0.1, 0.2, 0.2, 0.3, 0.4, 0.5, 0.6].map((share, i) => ({ week: i + 1, share })),
          },
        }),
        pair('C', 'Toy Harbour Low', {
          part: 'softer',
          reasons: [{ code: 'soft' }],
          misgivings: [{ code: 'tall' }],
          unknown: ['drop'],
          lastPair: true,
        }),
      ],
      ifDropped: [],
    },
  ],
  strips: [
    {
      attribute: 'mass',
      band: [0.38, 0.6],
      pairs: [
        { letter: 'A', at: 0.64 },
        { letter: 'B', at: 0.42 },
        { letter: 'C', at: 0.45 },
      ],
      today: 0.8,
      missing: [],
    },
    {
      attribute: 'cushion',
      band: [0.3, 0.55],
      pairs: [
        { letter: 'A', at: 0.35 },
        { letter: 'B', at: 0.5 },
        { letter: 'C', at: 0.75 },
      ],
      today: 0.62,
      missing: [],
    },
    {
      attribute: 'drop',
      band: [0.2, 0.45],
      pairs: [
        { letter: 'A', at: 0.4 },
        { letter: 'B', at: 0.3 },
      ],
      today: 0.6,
      missing: ['C'],
    },
    {
      attribute: 'midfoot-hold',
      band: [0.5, 0.8],
      pairs: [
        { letter: 'A', at: 0.5 },
        { letter: 'B', at: 0.5 },
        { letter: 'C', at: 0.5 },
      ],
      today: 0.5,
      missing: [],
    },
    {
      attribute: 'platform-width',
      band: [0.6, 1],
      pairs: [
        { letter: 'A', at: 1 },
        { letter: 'B', at: 0 },
      ],
      missing: ['C'],
    },
  ],
  musts: [],
  justSize: false,
  todayMeasured: true,
  tasks: { gentle: ['stand', 'walk'], moving: ['hop'], needsFitter: true },
  size: {
    from: 'measured',
    footLength: 265,
    doubt: 0,
    toeRoom: [10, 15],
    innerLength: [275, 280],
    calculated: [
      { system: 'eu', label: '42' },
      { system: 'uk', label: '8.5' },
      { system: 'us-men', label: '9.5' },
      { system: 'us-women', label: '10.5' },
    ],
    labelsDiffer: false,
    findings: [],
    left: { length: 262, ballGirth: 248 },
    right: { length: 265 },
  },
  cautions: [
    { code: 'stop', level: 'mind' },
    { code: 'change', level: 'mind' },
    { code: 'brace', level: 'mind' },
    { code: 'dry', level: 'upkeep' },
    { code: 'sole', level: 'upkeep' },
  ],
  advice: [{ code: 'sock', kind: 'sock' }],
  healthAsked: true,
  healthNotes: false,
};

/** The longest card: every level of caution at once, several times over. */
export const longFacts: CardFacts = {
  ...toyFacts,
  cautions: [
    { code: 'calf', level: 'now' },
    { code: 'wound', level: 'today' },
    { code: 'numb', level: 'before-choosing' },
    ...toyFacts.cautions,
  ],
};

export const referFacts: CardFacts = {
  ...longFacts,
  outcome: 'refer',
  lineUps: [],
  strips: [],
  tasks: { gentle: [], moving: [], needsFitter: false },
  advice: [],
};

/** A toy card, laid out and drawn. */
export async function toyPdf(facts: CardFacts, format: string, language: 'en' | 'de' = 'en'): Promise<Uint8Array> {
  return (await drawCard(facts, toyWordsOf(language), toyTemplate(format), fonts)).pdf;
}
