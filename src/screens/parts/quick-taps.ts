/** One tap, as far as telling two quick ones apart goes: when (milliseconds), where (CSS pixels) and on which page. */
export interface Tap {
  readonly at: number;
  readonly x: number;
  readonly y: number;
  readonly page: string;
}

/**
 * A label's own click on its field follows within the same event: from memory, under 10 ms. Two taps of a finger are
 * never so close; a double tap is over within 300 ms (Android's own limit; from memory), a slow hand's a little later.
 */
const SAME_TAP = 20;
const DOUBLE_TAP = 400;
/** How far apart two taps of one finger may land, CSS pixels. Common practice; a target is 56. */
const ONE_SPOT = 24;

/**
 * Whether a tap is the second of two quick ones on one spot that was meant for what stood there before: the page has
 * turned in between, and nobody has read the new one yet.
 *
 * @example isEcho({ at: 0, x: 50, y: 80, page: 'shelf' }, { at: 150, x: 52, y: 80, page: 'age-band' }) // true
 */
export function isEcho(before: Tap | undefined, now: Tap): boolean {
  if (!before || before.page === now.page) return false;
  const gap = now.at - before.at;
  const near = Math.hypot(now.x - before.x, now.y - before.y) <= ONE_SPOT;
  return near && gap > SAME_TAP && gap <= DOUBLE_TAP;
}
