import type { OldPair } from './observation.ts';

/**
 * Space an ordinary pair leaves in front of the toe, millimetres, where no toe print was seen.
 * The middle of the adults' 10 to 15; an encyclopaedia gives 15 as typical, older texts 15 to 20.
 */
export const USUAL_ROOM = 12.5;

/** A foot's length worked out from the insole of the old pair, and how far it may be out, millimetres. */
export interface InsoleFoot {
  readonly length: number;
  readonly doubt: number;
}

/**
 * The foot's length from the old pair's removed insole: its length less the space in front of the toe print.
 *
 * With a toe print the doubt is 4 mm, a print's soft edge and the foot's slide (common practice). Without one the
 * usual room is taken off and the doubt is 7 mm: published gaps run from 6 to 20. No answer without an insole length.
 *
 * @example footFromInsole({ insoleLength: 280, toePrintGap: 14 }) // { length: 266, doubt: 4 }
 */
export function footFromInsole(pair: OldPair): InsoleFoot | undefined {
  if (pair.insoleLength === undefined) return undefined;
  if (pair.toePrintGap === undefined) return { length: pair.insoleLength - USUAL_ROOM, doubt: 7 };
  return { length: pair.insoleLength - pair.toePrintGap, doubt: 4 };
}
