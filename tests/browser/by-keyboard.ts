import { expect, type Locator, type Page } from '@playwright/test';
import type { Act, Type } from './walk.ts';

/** No page of the kiosk has as many places to stop at. */
const MOST_STOPS = 90;

/** Where the focus is: what a person sees of it. */
export interface Stop {
  readonly name: string;
  readonly inMain: boolean;
  /** A ring around the focused thing, or around the label or tile it stands in. */
  readonly ring: boolean;
  /** Its middle is on the screen and nothing lies over it. */
  readonly clear: boolean;
  readonly box: { readonly top: number; readonly bottom: number; readonly left: number };
}

export const stopNow = (page: Page): Promise<Stop | undefined> =>
  page.evaluate(() => {
    const focused = document.activeElement;
    if (!focused || focused === document.body) return undefined;
    const label = focused instanceof HTMLInputElement ? focused.closest('label') : null;
    const shown = label && focused.matches('[type=radio], [type=checkbox]') ? label : focused;
    const ringed = (element: Element): boolean => {
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
    };
    const { top, bottom, left, width, height } = shown.getBoundingClientRect();
    const over = document.elementFromPoint(left + width / 2, top + height / 2);
    return {
      name: shown.textContent?.trim().replace(/\s+/g, ' ') || shown.tagName,
      inMain: shown.closest('main') !== null,
      ring: ringed(focused) || ringed(shown),
      clear: over !== null && (shown.contains(over) || over.contains(shown)),
      box: { top: top + scrollY, bottom: bottom + scrollY, left },
    };
  });

/** Whether the eye goes on, not back: down the page, or along the same row. */
export const goesOn = (before: Stop, after: Stop): boolean => {
  const { box: a } = before;
  const { box: b } = after;
  const sameRow = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > (a.bottom - a.top) / 2;
  return sameRow ? b.left > a.left : b.top > a.top;
};

const isOn = (on: Locator): Promise<boolean> => on.evaluate((element) => element.contains(document.activeElement));

/** Tab, until the focus is there. `look` sees every stop on the way. */
export async function tabTo(on: Locator, look?: (stop: Stop | undefined) => void): Promise<void> {
  const page = on.page();
  for (let stops = 0; stops <= MOST_STOPS; stops += 1) {
    if (await isOn(on)) return;
    await page.keyboard.press('Tab');
    look?.(await stopNow(page));
  }
  throw new Error(`Tab never came to ${String(on)}`);
}

/** Buttons by Enter, tick boxes by Space, and a choice of one by Tab to its group and the arrows. */
export const byKeyboard: Act = async (on) => {
  const page = on.page();
  const radio = on.locator('input[type="radio"]');
  if ((await radio.count()) > 0) {
    const name = await radio.getAttribute('name');
    await tabTo(
      page.locator(`fieldset:has(> * input[name="${name}"]), fieldset:has(> * > * input[name="${name}"])`).last(),
    );
    for (let presses = 0; !(await radio.isChecked()); presses += 1) {
      expect(presses, 'the arrows come round to every choice').toBeLessThan(12);
      await page.keyboard.press(presses === 0 && (await isOn(on)) ? 'Space' : 'ArrowDown');
    }
    return;
  }
  await tabTo(on);
  await page.keyboard.press((await on.locator('input').count()) > 0 ? 'Space' : 'Enter');
};

export const typeByKeyboard: Type = async (on, text) => {
  await tabTo(on);
  await on.page().keyboard.press('Control+a');
  await on.page().keyboard.type(text);
};
