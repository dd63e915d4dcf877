import fc from 'fast-check';
import { NUMBER_ATTRIBUTES } from '../../src/attributes/attributes.ts';
import { attribute } from '../../src/attributes/table.ts';
import type { Activity, Knowledge } from '../../src/flow/knowledge.ts';
import type { Facts, Must, Need, Profile, Reason } from '../../src/profile/profile.ts';
import type { Scored } from '../../src/shortlist/scored.ts';
import { score } from '../../src/shortlist/scored.ts';
import type { Box, Shoe, Stock } from '../../src/stock/shoe.ts';
import type { Visit } from '../../src/visit/visit.ts';

// Invented shoes, needs and visits: none of it is anybody's data, and no figure stands for anything.

export function shoe(id: string, numbers: Shoe['numbers'] = {}, more: Partial<Shoe> = {}): Shoe {
  return { id, name: `Toy ${id}`, use: ['gym'], shelf: 'any', numbers, marks: {}, lists: {}, ...more };
}

/** A box whose inner length suits the toy profile's foot of 265 mm, unless told otherwise. */
export function box(of: string, more: Partial<Box> = {}): Box {
  return {
    id: `${of}-box`,
    shoe: of,
    labels: { eu: '42' },
    innerLength: 277,
    place: 'A1',
    onHand: 2,
    reserved: 0,
    ...more,
  };
}

export function stockOf(shoes: readonly Shoe[]): Stock {
  return { shoes, boxes: shoes.map(({ id }) => box(id)), asOf: '2026-11-25T09:12' };
}

export const reason = (from: string, rule = `rule-${from.replaceAll(':', '-')}`): Reason => ({
  from,
  rule,
  source: 'common-practice',
  grade: 'common-practice',
});

export function need(key: Need['attribute'], ideal: Need['ideal'], importance = 0.5, from = 'activity'): Need {
  const { step } = attribute(key);
  return {
    attribute: key,
    ideal,
    limits: [ideal[0] - 2 * step, ideal[1] + 2 * step],
    importance,
    reasons: [reason(from)],
  };
}

export const must = (key: string, value: Must['value'] = true, from = 'place-rules'): Must => ({
  attribute: key,
  value,
  reasons: [reason(from)],
});

export function profile(needs: readonly Need[], musts: readonly Must[] = [], facts: Facts = {}): Profile {
  return {
    outcome: 'shortlist',
    hold: 'none',
    needs,
    musts,
    cautions: [],
    advice: [],
    conflicts: [],
    size: { from: 'measured', footLength: 265, doubt: 1, toeRoom: [10, 15], innerLength: [275, 280], findings: [] },
    unknown: [],
    facts: { activity: 'toy-hopping', ...facts },
  };
}

export const visit: Visit = {
  flow: 'toy',
  flowVersion: 1,
  language: 'en',
  answers: {},
  overrides: [],
  observation: {},
  tryOns: [],
};

export const knowledge: Knowledge = {
  flow: {
    id: 'toy',
    version: 1,
    languages: ['en'],
    bounds: { longest: 9, shortWays: [], typical: { story: 'toy', screens: 9 } },
    sections: [
      {
        id: 'all',
        questions: [
          { id: 'activity', kind: 'one-of', options: { table: 'activities' } },
          {
            id: 'liking',
            kind: 'against-today',
            properties: [{ id: 'cushion', choices: ['softer', 'same', 'firmer', 'no-preference'] }],
          },
          { id: 'place-rules', kind: 'some-of', options: [{ id: 'non-marking' }, { id: 'closed-heel' }] },
          { id: 'body', kind: 'body-map', health: true, regions: [] },
          { id: 'conditions', kind: 'some-of', health: true, options: [{ id: 'falls-or-unsteady' }] },
        ],
      },
    ],
  },
  activities: [{ id: 'toy-hopping', unit: 'sessions' } as Activity],
  floors: [],
  shoeKinds: [],
  rules: [
    {
      id: 'rule-liking-cushion',
      basis: 'liking',
      topic: 'cushion',
      source: 'common-practice',
      grade: 'common-practice',
      known: 'memory',
    },
    {
      id: 'rule-place-rules',
      basis: 'place',
      topic: 'place',
      source: 'common-practice',
      grade: 'common-practice',
      known: 'memory',
    },
  ],
  cautions: [],
  advice: [],
  sources: [],
};

export const scored = (shoes: readonly Shoe[], needs: readonly Need[]): readonly Scored[] =>
  shoes.map((each) => score(each, needs));

/** Any figure a property may take, a little beyond its usual range too. */
const anyFigure = (key: Need['attribute']) => {
  const [low, high] = attribute(key).range;
  return fc.integer({ min: low * 2 - 2, max: high * 2 + 2 }).map((half) => half / 2);
};

const anyNumbers = fc
  .record(Object.fromEntries(NUMBER_ATTRIBUTES.map((key) => [key, anyFigure(key)])), { requiredKeys: [] })
  .map((numbers) => numbers as Shoe['numbers']);

const anyShoe = (id: string): fc.Arbitrary<Shoe> =>
  fc.record({
    id: fc.constant(id),
    name: fc.constant(`Toy ${id}`),
    use: fc.constant(['gym']),
    shelf: fc.constantFrom('men', 'women', 'any'),
    numbers: anyNumbers,
    marks: fc.record({ 'non-marking': fc.boolean(), 'closed-heel': fc.boolean() }, { requiredKeys: [] }),
    lists: fc.record(
      {
        closure: fc.constantFrom(['laces'], ['strap'], ['laces', 'zip']),
        materials: fc.constantFrom(['leather'], ['mesh'], ['mesh', 'wool']),
        colour: fc.constantFrom(['black'], ['white', 'bright'], []),
        'safety-marks': fc.constantFrom(['slip'], ['slip', 'toe-cap'], []),
      },
      { requiredKeys: [] },
    ),
  });

/** A few shoes, each with an id of its own. */
export const anyShoes = (most = 12): fc.Arbitrary<readonly Shoe[]> =>
  fc
    .integer({ min: 0, max: most })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, i) => anyShoe(`s${String(i).padStart(2, '0')}`))));

const anyNeed = (key: Need['attribute']): fc.Arbitrary<Need> =>
  fc
    .record({
      figures: fc.tuple(anyFigure(key), anyFigure(key), anyFigure(key), anyFigure(key)),
      importance: fc.integer({ min: 1, max: 100 }).map((share) => share / 100),
      from: fc.constantFrom('activity', 'liking:cushion', 'body:heel', 'observation'),
    })
    .map(({ figures, importance, from }) => {
      const [a, b, c, d] = figures.toSorted((x, y) => x - y) as [number, number, number, number];
      return { attribute: key, ideal: [b, c], limits: [a, d], importance, reasons: [reason(from)] };
    });

export const anyNeeds: fc.Arbitrary<readonly Need[]> = fc
  .subarray([...NUMBER_ATTRIBUTES], { minLength: 1 })
  .chain((keys) => fc.tuple(...keys.map(anyNeed)));

export const anyMusts: fc.Arbitrary<readonly Must[]> = fc.subarray([
  must('non-marking'),
  must('closed-heel'),
  must('safety-marks', 'slip'),
  must('colour', 'black'),
  must('closure-not', 'laces'),
  must('material-not', 'leather'),
  must('stack-cap', 40),
  must('price-max', 120),
  must('shelf', 'women', 'shelf'),
]);
