import { NUMBER_ATTRIBUTES } from '../../attributes/attributes.ts';
import { BODY_WHEN } from '../answers.ts';
import type { Flow, Question } from '../format.ts';
import { type Activity, LOADS } from '../knowledge.ts';
import type { Tables } from '../options.ts';
import { questionsOf } from '../route.ts';
import { type Shape, shapeOfAnswer } from './shape.ts';

const YES_NO: Shape = { yesNo: true };
const ONE: Shape = { range: [0, 1] };
const range = (from: number, to: number): Shape => ({ range: [from, to] });

/**
 * Every fact a rule may read, with the values it can have: each answer under its question's id, what is blended from
 * the tables, and what the fitter saw. Ranges are wide enough for anybody; they only tell a slip from a threshold.
 */
export function factShapes(
  flow: Flow,
  tables: Tables,
  activities: readonly Pick<Activity, 'group' | 'otherFootwear'>[],
): ReadonlyMap<string, Shape> {
  const facts = new Map<string, Shape>(Object.entries(FIXED));
  for (const load of LOADS) facts.set(`load-${load}`, ONE);
  for (const attribute of NUMBER_ATTRIBUTES) facts.set(`today-${attribute}`, range(-1000, 10_000));
  facts.set('activity-group', { words: [...new Set(activities.map(({ group }) => group))] });
  facts.set('other-footwear', { words: [...new Set(activities.flatMap((row) => row.otherFootwear ?? []))] });
  for (const question of questionsOf(flow)) {
    if (question.kind !== 'against-today') facts.set(question.id, shapeOfAnswer(question, tables));
    for (const [name, shape] of partsOf(question)) facts.set(name, shape);
  }
  return facts;
}

/** Facts made from the parts of one answer. */
function partsOf(question: Question): readonly (readonly [string, Shape])[] {
  switch (question.kind) {
    case 'number':
      return [[`${question.id}-unit`, { words: question.units.map(({ id }) => id) }]];
    case 'against-today':
      return question.properties.map(({ id, choices }) => [`${question.id}-${id}`, { words: choices }]);
    case 'body-map':
      return question.regions.flatMap(({ id }) => [
        [`${question.id}-${id}`, { words: BODY_WHEN }],
        [`${question.id}-${id}-seen`, YES_NO],
        [`${question.id}-${id}-since`, ONE],
      ]);
    default:
      return [];
  }
}

const FIXED: Readonly<Record<string, Shape>> = {
  'floor-hardness': ONE,
  'floor-grip': ONE,
  'floor-roughness': ONE,
  'floor-lugs': range(0, 20),
  'floor-marks': YES_NO,
  'floor-wet': ONE,
  'toe-room-low': range(0, 40),
  'toe-room-high': range(0, 40),
  'person-minor': YES_NO,
  'person-older': YES_NO,
  'today-known': YES_NO,
  'health-asked': { words: ['asked', 'skipped', 'not-reached'] },
  cleared: YES_NO,
  'hold-carried': { words: ['none', 'skipped', 'measure-first', 'before-choosing', 'today', 'now'] },
  'roll-in': YES_NO,
  'roll-out': YES_NO,
  'roll-seen': YES_NO,
  'foot-length': range(90, 350),
  'foot-difference': range(0, 60),
  'width-z': range(-6, 6),
  'old-pair-insole-length': range(90, 350),
  'old-pair-toe-print-gap': range(-10, 60),
  'old-pair-spill': { words: ['none', 'inner', 'outer', 'both'] },
  'old-pair-bulge': { words: ['none', 'inner', 'outer'] },
  'old-pair-heel-lining': { words: ['whole', 'worn', 'torn'] },
  'old-pair-sole-wear': { words: ['even', 'outer-heel', 'inner-heel', 'forefoot', 'toe', 'worn-out'] },
};
