import type { AttributeKey } from './attributes.ts';
import { attribute } from './table.ts';

/**
 * The id of the anchored word nearest to a value, ties to the higher; its words are `attribute.<key>.step.<id>`.
 * No answer for a property that is measured rather than judged.
 *
 * @example
 * anchorOf('cushion', 4) // 'soft'
 * anchorOf('medial-support', 0) // 'none'
 * anchorOf('drop', 8) // undefined
 */
export function anchorOf(key: AttributeKey, value: number): string | undefined {
  const { anchors, range } = attribute(key);
  return anchors?.[Math.round(Math.min(range[1], Math.max(range[0], value))) - range[0]];
}
