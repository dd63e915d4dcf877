import type { Act } from '../browser/walk.ts';

/**
 * How long the hand stays off the page after a tap, milliseconds: longer than any page takes to be painted on a slowed
 * processor, and than two taps on one spot may lie apart.
 */
const HANDS_OFF = 600;

/**
 * A tap and nothing else. Whoever looks for the next button at once, or asks what lies under the finger, does so on the
 * page's own thread, and a slowed page is measured with its watcher; here the place is found first, then touched, then
 * left alone.
 */
export const finger: Act = async (on) => {
  const box = await on.evaluate(async (target) => {
    target.scrollIntoView({ block: 'nearest' });
    await new Promise((seen) => requestAnimationFrame(() => requestAnimationFrame(seen)));
    const { left, top, width, height } = target.getBoundingClientRect();
    return { x: left + width / 2, y: top + height / 2 };
  });
  await on.page().touchscreen.tap(box.x, box.y);
  await new Promise((rested) => setTimeout(rested, HANDS_OFF));
};
