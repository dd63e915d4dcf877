import type { AttributeKey } from '../attributes/attributes.ts';

/** What a liking, as the customer is asked about it, is called in the table of shoe properties. */
export const LIKED_ATTRIBUTES: ReadonlyMap<string, readonly AttributeKey[]> = new Map<string, readonly AttributeKey[]>([
  ['cushion', ['cushion']],
  ['weight', ['mass']],
  ['flex', ['bend']],
  ['rebound', ['rebound']],
  ['toe-room', ['toe-box-shape', 'toe-box-depth']],
  ['hold', ['midfoot-hold']],
  ['arch', ['medial-support']],
  ['collar', ['collar-height']],
]);
