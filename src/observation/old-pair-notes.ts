import type { OldPair } from './observation.ts';

/** Under this space in front of the toe print the old pair was short: the lowest published floor is 10 mm (Kinz 2015). */
const SHORT = 10;
/** Over this it was long: published upper ends run from 15 to 20 mm. */
const LONG = 20;

/**
 * What the old pair shows, as codes: words under `observation.note.<code>`. It notes wear and diagnoses nothing.
 *
 * @example oldPairNotes({ toePrintGap: 6, spill: 'outer', heelLining: 'torn' })
 * // ['toe-print-short', 'spill-outer', 'heel-lining-torn']
 */
export function oldPairNotes(pair: OldPair): readonly string[] {
  const gap = pair.toePrintGap;
  return [
    ...(gap !== undefined && gap < SHORT ? ['toe-print-short'] : []),
    ...(gap !== undefined && gap > LONG ? ['toe-print-long'] : []),
    ...(pair.spill !== undefined && pair.spill !== 'none' ? [`spill-${pair.spill}`] : []),
    ...(pair.bulge !== undefined && pair.bulge !== 'none' ? [`bulge-${pair.bulge}`] : []),
    ...(pair.heelLining !== undefined && pair.heelLining !== 'whole' ? [`heel-lining-${pair.heelLining}`] : []),
    ...(pair.soleWear !== undefined && pair.soleWear !== 'even' ? [`sole-${pair.soleWear}`] : []),
  ];
}
