import type { AttributeKey } from '../attributes/attributes.ts';
import { attribute } from '../attributes/table.ts';
import type { Need } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import { difference } from './likeness.ts';
import type { Part } from './shortlist.ts';

/** What a pair is called that has clearly less, or clearly more, of a property than the first pair. */
const CONTRASTS: Readonly<Partial<Record<AttributeKey, { readonly less?: Part; readonly more?: Part }>>> = {
  mass: { less: 'lighter', more: 'heavier' },
  'heel-stack': { less: 'lower', more: 'higher' },
  drop: { less: 'flatter', more: 'more-heel' },
  cushion: { less: 'firmer', more: 'softer' },
  rebound: { less: 'calmer', more: 'springier' },
  bend: { less: 'stiffer', more: 'bendier' },
  rocker: { less: 'less-rolling', more: 'more-rolling' },
  'heel-counter': { less: 'softer-heel', more: 'firmer-heel' },
  'medial-support': { less: 'freer-inner', more: 'firmer-inner' },
  'platform-width': { less: 'narrower-base', more: 'wider-base' },
  'midfoot-hold': { less: 'looser', more: 'snugger' },
  'toe-box-shape': { less: 'closer-toes', more: 'roomier-toes' },
  'collar-height': { less: 'lower-collar', more: 'higher-collar' },
  'lug-depth': { less: 'smoother-tread', more: 'deeper-tread' },
  // Dearer is no reason to try a pair.
  price: { less: 'cheaper' },
};

/** Every contrast, for the words to be complete. */
export const CONTRAST_PARTS: readonly Part[] = Object.values(CONTRASTS).flatMap(({ less, more }) =>
  [less, more].filter((part) => part !== undefined),
);

/** What a pair teaches beside the first one. */
export interface Contrast {
  readonly part: Part;
  /** It goes where the customer does not want to: against a wish, or to more weight, which nobody wants for itself. */
  readonly unwanted: boolean;
}

/**
 * The contrast in the needed property in which two pairs differ most, importance and difference together. Nothing when
 * no needed property differs by a noticeable step.
 */
export function contrastTo(first: Shoe, shoe: Shoe, needs: readonly Need[]): Contrast | undefined {
  let found: Contrast | undefined;
  let most = 0;
  for (const { attribute: key, importance, toward, neverLess } of needs) {
    const side = isLess(first, shoe, key) ? 'less' : 'more';
    if (neverLess && side === 'less') continue;
    const part = CONTRASTS[key]?.[side];
    const apart = difference(first, shoe, key);
    if (part === undefined || apart === undefined || !noticeable(first, shoe, key)) continue;
    if (importance * apart > most) {
      most = importance * apart;
      const against = toward !== undefined && side !== toward;
      found = { part, unwanted: against || (part === 'heavier' && toward !== 'more') };
    }
  }
  return found;
}

/** Whether the pair is firmer on the inner side than the first, by a step that people notice. */
export function isFirmerInner(first: Shoe, shoe: Shoe): boolean {
  return !isLess(first, shoe, 'medial-support') && noticeable(first, shoe, 'medial-support');
}

function isLess(first: Shoe, shoe: Shoe, key: AttributeKey): boolean {
  return (shoe.numbers[key] ?? 0) < (first.numbers[key] ?? 0);
}

function noticeable(first: Shoe, shoe: Shoe, key: AttributeKey): boolean {
  const one = first.numbers[key];
  const other = shoe.numbers[key];
  return one !== undefined && other !== undefined && Math.abs(one - other) >= attribute(key).step;
}
