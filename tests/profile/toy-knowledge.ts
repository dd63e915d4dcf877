import activities from '../../flows/fitting/activities.json' with { type: 'json' };
import floors from '../../flows/fitting/floors.json' with { type: 'json' };
import flow from '../../flows/fitting/flow.json' with { type: 'json' };
import type { AttributeKey } from '../../src/attributes/attributes.ts';
import type { AdviceRow, Ask, CautionLevel, CautionRow, Grade, Knowledge, Rule } from '../../src/flow/knowledge.ts';

const by = (grade: Grade = 'common-practice') => ({ source: 'common-practice', grade, known: 'computed' }) as const;

/** A rule for tests, invented. Its topic is its id unless said otherwise. */
export const rule = (id: string, more: Partial<Rule> = {}): Rule => ({
  id,
  topic: id,
  basis: 'activity',
  ...by(),
  ...more,
});

/** What a rule for tests asks: an ideal range. */
export const ask = (attribute: AttributeKey, ideal: readonly [number, number], weight: number, per?: string): Ask => ({
  attribute,
  ideal,
  weight,
  ...(per === undefined ? {} : { per }),
});

/** What a rule for tests asks: a move from today's shoe. */
export const shift = (attribute: AttributeKey, by: number, weight: number): Ask => ({ attribute, shift: by, weight });

const caution = (id: string, level: CautionLevel, more: Partial<CautionRow> = {}): CautionRow => ({
  id,
  level,
  ...by(),
  ...more,
});

const sign = (id: string, level: CautionLevel): Rule =>
  rule(`sign-${id}`, { basis: 'signs', when: { of: 'signs', includes: id }, cautions: [`see-${level}`] });

const CAUTIONS: readonly CautionRow[] = [
  caution('see-now', 'now', { health: true, whom: 'emergency' }),
  caution('see-today', 'today', { health: true, whom: 'doctor' }),
  caution('see-before-choosing', 'before-choosing', { health: true, whom: 'doctor' }),
  caution('ease-in', 'mind', { always: true }),
  caution('air-dry', 'upkeep', { always: true }),
  caution('measure-again', 'mind'),
];

const ADVICE: readonly AdviceRow[] = [{ id: 'heel-lacing', kind: 'lacing', ...by('weak') }];

const RULES: readonly Rule[] = [
  rule('bounce-cushion', { asks: [ask('cushion', [3, 4], 0.8, 'load-bounce')] }),
  rule('impact-cushion', { topic: 'landing', grade: 'moderate', asks: [ask('cushion', [3, 5], 0.7, 'load-impact')] }),
  rule('squat-firm', { asks: [ask('cushion', [1, 2], 0.9, 'load-squat'), ask('drop', [4, 10], 0.4, 'load-squat')] }),
  rule('sideways-low', {
    asks: [ask('heel-stack', [15, 26], 0.8, 'load-side-to-side'), ask('drop', [4, 8], 0.7, 'load-side-to-side')],
  }),
  rule('rough-lugs', { basis: 'floor', asks: [ask('lug-depth', [3, 5], 0.9, 'floor-roughness')] }),
  rule('smooth-lugs', { basis: 'floor', when: { of: 'floor-lugs', upTo: 1 }, asks: [ask('lug-depth', [0, 1], 0.6)] }),
  rule('hard-floor', { basis: 'floor', grade: 'weak', asks: [ask('cushion', [4, 5], 0.9, 'floor-hardness')] }),
  rule('hall-marks', {
    basis: 'floor',
    when: { of: 'floor-marks', is: true },
    musts: [{ attribute: 'non-marking', value: true }],
  }),
  rule('hall-rule', {
    basis: 'place',
    when: { of: 'place-rules', includes: 'non-marking' },
    musts: [{ attribute: 'non-marking', value: true }],
  }),
  rule('toe-cap', { basis: 'place', when: { of: 'place-rules', includes: 'toe-cap' }, outcome: 'other-footwear' }),
  rule('own-insole', {
    basis: 'today',
    when: { of: 'inside', includes: 'own-insole' },
    musts: [{ attribute: 'removable-insole', value: true }],
  }),
  rule('prosthesis', { basis: 'person', when: { of: 'inside', includes: 'prosthesis' }, outcome: 'fitter-first' }),
  rule('fine-pair', {
    basis: 'today',
    when: {
      all: [
        { of: 'reason', is: 'check-mine' },
        { of: 'now-troubles', includes: 'none' },
      ],
    },
    outcome: 'keep-yours',
  }),
  rule('softer', { basis: 'liking', when: { of: 'liking-cushion', is: 'softer' }, asks: [shift('cushion', 1, 0.7)] }),
  rule('firmer', { basis: 'liking', when: { of: 'liking-cushion', is: 'firmer' }, asks: [shift('cushion', -1, 0.7)] }),
  rule('same-cushion', {
    basis: 'liking',
    when: { of: 'liking-cushion', is: 'same' },
    asks: [shift('cushion', 0, 0.5)],
  }),
  rule('lighter', { basis: 'liking', when: { of: 'liking-weight', is: 'lighter' }, asks: [shift('mass', -40, 0.7)] }),
  rule('sore-heel', {
    basis: 'body',
    grade: 'weak',
    when: { of: 'body', includes: 'heel' },
    asks: [{ ...ask('cushion', [4, 5], 0.6, 'body-heel-since') }],
  }),
  rule('roll-in', {
    basis: 'observation',
    grade: 'contested',
    when: { of: 'roll-in', is: true },
    asks: [ask('medial-support', [1, 2], 0.5)],
  }),
  rule('older', {
    basis: 'person',
    grade: 'moderate',
    when: { of: 'person-older', is: true },
    asks: [ask('heel-stack', [10, 25], 0.8), ask('cushion', [1, 3], 0.7)],
  }),
  rule('heel-slips', { basis: 'today', when: { of: 'now-troubles', includes: 'heel-slips' }, advice: ['heel-lacing'] }),
  rule('pregnant', { basis: 'person', when: { of: 'conditions', includes: 'pregnant' }, cautions: ['measure-again'] }),
  rule('diabetes-numb', {
    basis: 'signs',
    when: {
      all: [
        { of: 'conditions', includes: 'diabetes' },
        { of: 'signs', includes: 'numb-feet' },
      ],
    },
    cautions: ['see-today'],
  }),
  sign('four-steps', 'now'),
  sign('hot-swollen-leg', 'today'),
  sign('numb-feet', 'before-choosing'),
  sign('limping-child', 'before-choosing'),
];

/** The main flow with its activities and floors, and rules, cautions and kinds of shoe invented for tests. */
export const TOY: Knowledge = {
  flow,
  activities,
  floors,
  shoeKinds: [
    { id: 'road-cushioned', group: 'running', usual: { cushion: [3, 4], drop: [8, 10], mass: [260, 300] }, ...by() },
    { id: 'court', group: 'court-gym', usual: { cushion: [2, 3], drop: [6, 10] }, ...by() },
  ],
  rules: RULES,
  cautions: CAUTIONS,
  advice: ADVICE,
  sources: [],
} as unknown as Knowledge;

/** The same with other rules. */
export const withRules = (...rules: readonly Rule[]): Knowledge => ({ ...TOY, rules });
