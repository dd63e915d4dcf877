import type { AttributeKey } from './attributes.ts';
import type { NumberRow } from './row.ts';

const practice = 'common practice';

type Measured = Omit<NumberRow, 'key' | 'kind' | 'anchors'>;
const measured = (key: AttributeKey, row: Measured): NumberRow => ({ key, kind: 'number', ...row });

type Judged = Pick<NumberRow, 'column' | 'aliases' | 'wanted' | 'tools'> & {
  readonly from: 0 | 1;
  readonly anchors: readonly string[];
};
/** One step on an anchored scale is the least that two fitters agree on, so it is the step. */
function judged(key: AttributeKey, { from, ...row }: Judged): NumberRow {
  const range = [from, from + row.anchors.length - 1] as const;
  return { key, kind: 'ordinal', unit: 'step', range, accepted: range, step: 1, rare: true, source: practice, ...row };
}

/** Rows with a size. Heights by hand are taken on the insole, since the side wall of a midsole stands taller than the foot does. */
export const NUMBER_ROWS: readonly NumberRow[] = [
  measured('mass', {
    column: 'mass (g)',
    aliases: ['weight', 'gewicht', 'masse'],
    unit: 'g',
    range: [150, 700],
    accepted: [60, 1500],
    step: 30,
    wanted: 'range',
    rare: false,
    tools: ['scales'],
    // Running costs about 1 % more oxygen for each 100 g on a shoe (secondary reports, strong): a third of that is the step.
    source: practice,
  }),
  measured('heel-stack', {
    column: 'heel stack (mm)',
    aliases: ['heel height', 'stack heel', 'fersenhöhe', 'sohlenhöhe ferse'],
    unit: 'mm',
    range: [5, 45],
    accepted: [2, 70],
    step: 3,
    wanted: 'range',
    rare: false,
    tools: ['rod-gauge', 'rule'],
    // World Athletics shoe rules: measured at 12 % of the inner length from the heel.
    source: practice,
  }),
  measured('forefoot-stack', {
    column: 'forefoot stack (mm)',
    aliases: ['forefoot height', 'stack forefoot', 'vorfußhöhe', 'sohlenhöhe vorfuß'],
    unit: 'mm',
    range: [4, 38],
    accepted: [2, 60],
    step: 3,
    wanted: 'range',
    rare: false,
    tools: ['rod-gauge', 'rule'],
    // World Athletics shoe rules: measured at 75 % of the inner length from the heel.
    source: practice,
  }),
  measured('drop', {
    column: 'drop (mm)',
    aliases: ['heel drop', 'heel to toe drop', 'offset', 'sprengung'],
    unit: 'mm',
    range: [0, 22],
    accepted: [-6, 30],
    // Stated drops err by 1 to 3 mm (from memory), so a difference under 2 says nothing.
    step: 2,
    wanted: 'range',
    rare: false,
    tools: ['rod-gauge'],
    source: practice,
  }),
  judged('cushion', {
    column: 'cushion (1-5)',
    aliases: ['cushioning', 'dämpfung'],
    from: 1,
    anchors: ['very-firm', 'firm', 'medium', 'soft', 'very-soft'],
    wanted: 'range',
    tools: ['thumb'],
  }),
  judged('rebound', {
    column: 'rebound (1-5)',
    aliases: ['energy return', 'rückstellung', 'rückfederung'],
    from: 1,
    anchors: ['dead', 'calm', 'even', 'springy', 'very-springy'],
    wanted: 'range',
    tools: ['thumb'],
  }),
  judged('bend', {
    column: 'bend (1-5)',
    aliases: ['flex', 'flexibility', 'biegsamkeit'],
    from: 1,
    anchors: ['hardly', 'a-little', 'half-way', 'easily', 'folds'],
    wanted: 'range',
    tools: ['hands'],
  }),
  judged('forefoot-stiffness', {
    column: 'forefoot stiffness (1-5)',
    aliases: ['toe stiffness', 'plate', 'vorfußsteife', 'vorfußsteifigkeit'],
    from: 1,
    anchors: ['very-bendy', 'bendy', 'medium', 'stiff', 'plate'],
    wanted: 'range',
    tools: ['hands'],
  }),
  judged('rocker', {
    column: 'rocker (0-2)',
    aliases: ['rocker sole', 'toe spring', 'abrollsohle', 'rolle'],
    from: 0,
    anchors: ['none', 'slight', 'tall'],
    wanted: 'range',
    tools: ['eye', 'rule'],
  }),
  judged('twist', {
    column: 'twist (1-5)',
    aliases: ['torsion', 'verdrehbarkeit', 'verwindung'],
    from: 1,
    anchors: ['hardly', 'a-little', 'half-way', 'easily', 'wrings'],
    wanted: 'range',
    tools: ['hands'],
  }),
  judged('heel-counter', {
    column: 'heel counter (1-5)',
    aliases: ['heel cup', 'heel cup stiffness', 'fersenkappe'],
    from: 1,
    anchors: ['folds', 'soft', 'medium', 'firm', 'hard'],
    wanted: 'range',
    tools: ['thumb'],
  }),
  judged('medial-support', {
    column: 'medial support (0-2)',
    aliases: ['support', 'stability', 'innenstütze', 'pronationsstütze', 'stütze innen'],
    from: 0,
    anchors: ['none', 'some', 'firm'],
    wanted: 'range',
    tools: ['eye', 'thumb'],
  }),
  measured('platform-width', {
    column: 'platform width (mm)',
    aliases: ['outsole width', 'sohlenbreite', 'standbreite'],
    unit: 'mm',
    range: [85, 125],
    accepted: [50, 160],
    step: 4,
    wanted: 'range',
    rare: true,
    tools: ['rule'],
    source: practice,
  }),
  judged('midfoot-hold', {
    column: 'midfoot hold (1-5)',
    aliases: ['lockdown', 'midfoot wrap', 'mittelfußhalt'],
    from: 1,
    anchors: ['loose', 'easy', 'medium', 'snug', 'locked'],
    wanted: 'range',
    tools: ['hands'],
  }),
  judged('toe-box-shape', {
    column: 'toe box shape (1-3)',
    aliases: ['toe shape', 'zehenbox', 'zehenform'],
    from: 1,
    anchors: ['pointed', 'round', 'square'],
    wanted: 'range',
    tools: ['eye'],
  }),
  judged('toe-box-depth', {
    column: 'toe box depth (1-3)',
    aliases: ['toe depth', 'zehenhöhe'],
    from: 1,
    anchors: ['shallow', 'usual', 'deep'],
    wanted: 'range',
    tools: ['hands'],
  }),
  judged('instep-volume', {
    column: 'instep volume (1-3)',
    aliases: ['instep', 'rist', 'ristvolumen', 'spann'],
    from: 1,
    anchors: ['low', 'usual', 'high'],
    wanted: 'range',
    tools: ['hands'],
  }),
  {
    ...judged('collar-height', {
      column: 'collar height (1-3)',
      aliases: ['collar', 'cut', 'schafthöhe', 'schaft'],
      from: 1,
      anchors: ['low', 'mid', 'high'],
      wanted: 'range',
      tools: ['eye'],
    }),
    rare: false,
  },
  measured('lug-depth', {
    column: 'lug depth (mm)',
    aliases: ['lugs', 'tread depth', 'profiltiefe', 'stollentiefe'],
    unit: 'mm',
    range: [0, 8],
    accepted: [0, 15],
    step: 1,
    wanted: 'range',
    rare: false,
    tools: ['tread-gauge'],
    source: practice,
  }),
  measured('price', {
    column: 'price',
    aliases: ['retail price', 'rrp', 'preis', 'vk'],
    unit: 'money',
    range: [30, 220],
    accepted: [1, 2000],
    step: 15,
    wanted: 'less',
    rare: false,
    tools: ['box'],
    source: practice,
  }),
];
