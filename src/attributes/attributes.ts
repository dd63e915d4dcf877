/** Keys of the one table of shoe properties; the table itself stands in `table.ts`. */
export const NUMBER_ATTRIBUTES = [
  'mass',
  'heel-stack',
  'forefoot-stack',
  'drop',
  'cushion',
  'rebound',
  'bend',
  'forefoot-stiffness',
  'rocker',
  'twist',
  'heel-counter',
  'medial-support',
  'platform-width',
  'midfoot-hold',
  'toe-box-shape',
  'toe-box-depth',
  'instep-volume',
  'collar-height',
  'lug-depth',
  'price',
] as const;
export type AttributeKey = (typeof NUMBER_ATTRIBUTES)[number];

export const MARK_ATTRIBUTES = [
  'non-marking',
  'removable-insole',
  'waterproof',
  'quick-drying',
  'washable',
  'closed-heel',
] as const;
export type MarkKey = (typeof MARK_ATTRIBUTES)[number];

export const LIST_ATTRIBUTES = ['closure', 'tread', 'safety-marks', 'materials', 'colour', 'widths'] as const;
export type ListKey = (typeof LIST_ATTRIBUTES)[number];
