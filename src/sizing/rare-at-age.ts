import { footOfPrintedSize, type PrintedSize } from './foot-source.ts';

/**
 * Foot lengths beyond which a size is asked about again, millimetres; wide, for feet differ, and a pair may be worn too
 * short or too long. Feet are 153 to 156 mm long at three, and 234 to 258 when grown (means of girls and boys: Cheng, in
 * Children 2022;9:750); with the rates of `growth.ts` about 190 at six and 240 at eleven. How far from there is still
 * likely, three to five EU sizes: common practice.
 */
const LIKELY: Readonly<Record<string, readonly [from: number, to: number]>> = {
  'under-6': [0, 220],
  '6-to-10': [150, 265],
  '11-to-17': [180, Number.POSITIVE_INFINITY],
  '18-to-64': [195, Number.POSITIVE_INFINITY],
  '65-plus': [195, Number.POSITIVE_INFINITY],
};

/**
 * Whether a printed size is far from what feet of this age come to: a reason to ask again, never to refuse.
 *
 * @example rareAtAge({ value: 20.5, unit: 'eu' }, '6-to-10') // true
 * @example rareAtAge({ value: 20.5, unit: 'cm' }, '6-to-10') // false
 */
export function rareAtAge(size: PrintedSize, ageBand: string | undefined): boolean {
  const likely = LIKELY[ageBand ?? ''];
  const foot = footOfPrintedSize(size);
  return likely !== undefined && foot !== undefined && (foot < likely[0] || foot > likely[1]);
}
