import { expect, type Page, test } from '@playwright/test';
import { stopNow } from './by-keyboard.ts';
import { openState, SCREEN_STATES, speakState } from './screens.ts';

/** One of each kind of page: what the rest are made of. */
const KINDS = [
  'welcome',
  'welcome-draft',
  'ask-reason',
  'ask-activity',
  'activity-search',
  'ask-floors',
  'floors-how-often',
  'ask-place-rules',
  'size-other-unit',
  'signs-confirm',
  'ask-liking',
  'body-marked',
  'why-we-ask',
  'start-over',
  'idle-warning',
  'review',
  'result-pairs',
  'result-two-pairs',
  'result-refer-now',
  'result-no-pairs',
  'print-health',
  'card',
  'handed',
];
/** The fitter's and the shop's: what is full of things to touch. */
const BENCH_KINDS = [
  'bench-pin-wait',
  'bench-tickets',
  'bench-reasons',
  'bench-edit-why',
  'bench-measure-odd',
  'bench-old-pair',
  'bench-compare',
  'bench-box-sold',
  'bench-tried',
  'bench-closing',
  'bench-clearance',
  'shop-load',
  'shop-boxes',
  'shop-lacks',
  'shop-settings-wrong',
];
const ALL = SCREEN_STATES.map(({ id }) => id);

test.use({ reducedMotion: 'reduce' });

test('the kinds of page looked at here are listed states', () => {
  expect([...KINDS, ...BENCH_KINDS].filter((id) => !ALL.includes(id))).toEqual([]);
});

/** What sticks out sideways: the page itself, and what is wider than the screen or cut off by it. */
const sideways = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const wide = document.documentElement.clientWidth;
    const page =
      document.documentElement.scrollWidth > wide ? [`the page is ${document.documentElement.scrollWidth}`] : [];
    const out = [...document.querySelectorAll('main *, aside *, dialog *')].filter((element) => {
      const { left, right, width, height } = element.getBoundingClientRect();
      const seen = width > 1 && height > 1 && !element.closest('.visually-hidden, svg');
      return seen && (left < -1 || right > wide + 1);
    });
    return [
      ...page,
      ...out.map(
        (element) =>
          `${element.localName}.${element.className} ends at ${Math.round(element.getBoundingClientRect().right)}`,
      ),
    ];
  });

/** Least height and width of a target and least size of type, CSS pixels: for customers, and at the bench. */
type Least = readonly [target: number, type: number];
const CUSTOMER: Least = [56, 20];
const FITTER: Least = [44, 17];
/** What a finger aims at and what an eye reads, where smaller than it may be. */
const tooSmall = (page: Page, least: Least = CUSTOMER): Promise<readonly string[]> =>
  page.evaluate(([target, type]) => {
    const seen = (element: Element): boolean => {
      const { width, height } = element.getBoundingClientRect();
      return width > 1 && height > 1 && !element.closest('.visually-hidden');
    };
    const box = (element: Element) => (element.closest('label') ?? element).getBoundingClientRect();
    const controls = [...document.querySelectorAll('button, input, select, summary, a[href]')].filter(seen);
    const low = controls.filter((control) => box(control).height < target - 0.5 || box(control).width < target - 0.5);
    const texts = [...document.querySelectorAll('main *, aside *, dialog *')].filter(
      (element) =>
        seen(element) &&
        !element.closest('svg') &&
        [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim()),
    );
    const small = texts.filter((element) => Number.parseFloat(getComputedStyle(element).fontSize) < type - 0.01);
    const name = (element: Element) =>
      `${element.localName}.${element.className} ${element.textContent?.trim().slice(0, 20)}`;
    return [
      ...low.map(
        (element) => `target ${Math.round(box(element).width)}×${Math.round(box(element).height)} ${name(element)}`,
      ),
      ...small.map((element) => `type ${getComputedStyle(element).fontSize} ${name(element)}`),
    ];
  }, least);

/** Words that stick out of the button, choice or row they belong to. */
const cutOff = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      const holder = text.parentElement?.closest('button, label, summary, .said, .pair, td, th, dd');
      if (!holder || !text.textContent?.trim() || text.parentElement?.closest('.visually-hidden, svg, select'))
        continue;
      if (holder.localName === 'label' && holder.querySelector('select, textarea')) continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      const { left, right, width } = range.getBoundingClientRect();
      const box = holder.getBoundingClientRect();
      if (width > 1 && (left < box.left - 1 || right > box.right + 1))
        found.push(`cut off: ${text.textContent.trim()}`);
    }
    return found;
  });

/** The shapes a page is looked at in, one after the other: a state is loaded once. */
const SHAPES = {
  '320 px wide': { width: 320, height: 640 },
  'at 200 % of 1280 px': { width: 640, height: 400 },
  'on the smallest tablet': { width: 768, height: 1024 },
  upright: { width: 800, height: 1280 },
  lying: { width: 1280, height: 800 },
} as const;
type Shape = keyof typeof SHAPES;
/** Targets and type have to keep their size where a tablet stands in a shop; a narrow page may be set smaller. */
const TABLETS: readonly Shape[] = ['on the smallest tablet', 'upright', 'lying'];

/** What is wrong with the page as it stands, in these shapes. */
async function faultsIn(page: Page, shapes: readonly Shape[], least: Least): Promise<readonly string[]> {
  const found: string[] = [];
  for (const shape of shapes) {
    await page.setViewportSize(SHAPES[shape]);
    const small = TABLETS.includes(shape) ? await tooSmall(page, least) : [];
    const faults = [...(await sideways(page)), ...(await cutOff(page)), ...small];
    found.push(...faults.map((fault) => `${shape}: ${fault}`));
  }
  return found;
}

async function faultsOf(page: Page, state: string, language: string): Promise<readonly string[]> {
  await openState(page, state, language);
  const found = await faultsIn(page, Object.keys(SHAPES) as Shape[], CUSTOMER);
  return found.map((fault) => `${state} ${fault}`);
}

for (const [language, states] of [
  ['en', KINDS.slice(0, 8)],
  ['en', KINDS.slice(8, 15)],
  ['en', KINDS.slice(15)],
  ['de', KINDS.filter((_, at) => at % 2 === 0)],
  ['ar', KINDS.filter((_, at) => at % 4 === 3)],
] as const) {
  test(`in every shape, in ${language}, nothing scrolls sideways or is too small: ${states.join(', ')}`, async ({
    page,
  }) => {
    const found: string[] = [];
    for (const state of states) found.push(...(await faultsOf(page, state, language)));
    expect(found).toEqual([]);
  });
}

for (const half of [0, 1]) {
  const states = BENCH_KINDS.filter((_, at) => at % 2 === half);
  test(`on a tablet, in two languages, nothing is cut off or too small: ${states.join(', ')}`, async ({ page }) => {
    const found: string[] = [];
    for (const state of states) {
      await openState(page, state, 'de');
      for (const language of ['de', 'ar']) {
        if (language === 'ar') await speakState(page, 'ar');
        const faults = await faultsIn(page, TABLETS, FITTER);
        found.push(...faults.map((fault) => `${state} ${language} ${fault}`));
      }
    }
    expect(found).toEqual([]);
  });
}

test('a planted word too long for its button is found', async ({ page }) => {
  await openState(page, 'ask-reason');
  expect(await cutOff(page)).toEqual([]);
  await page
    .locator('.foot .button')
    .first()
    .evaluate((button) => {
      button.textContent = 'w'.repeat(80);
      (button as HTMLElement).style.setProperty('width', '90px');
    });
  expect((await cutOff(page)).join()).toContain('cut off: www');
});

test('with larger text nothing scrolls sideways, and the text is larger', async ({ page }) => {
  await openState(page, 'ask-liking');
  const size = () => page.locator('#ask').evaluate((heading) => Number.parseFloat(getComputedStyle(heading).fontSize));
  const before = await size();
  await page.getByRole('button', { name: 'Larger text' }).tap();
  expect(await size()).toBeCloseTo(before * 1.25, 0);
  for (const state of ['result-pairs', 'body-marked', 'ask-liking']) {
    await openState(page, state);
    await page.locator('html').evaluate((root) => root.setAttribute('data-text', 'large'));
    for (const size of [SHAPES.lying, SHAPES.upright, SHAPES['320 px wide']]) {
      await page.setViewportSize(size);
      expect(await sideways(page), state).toEqual([]);
    }
  }
});

test('a planted wide thing is found at 320 px', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await openState(page, 'review');
  expect(await sideways(page)).toEqual([]);
  await page
    .locator('main')
    .evaluate((main) => main.append(Object.assign(document.createElement('pre'), { textContent: 'w'.repeat(80) })));
  expect((await sideways(page)).join()).toContain('the page is');
});

test('a planted small button and small print are found', async ({ page }) => {
  await openState(page, 'ask-reason');
  await page.locator('main').evaluate((main) => {
    const button = Object.assign(document.createElement('button'), { textContent: 'x' });
    main.append(button);
  });
  const found = (await tooSmall(page)).join();
  expect(found).toContain('target');
  expect(found).toContain('type 13');
});

test('in forced colours every choice keeps an edge, what is chosen differs, and the focus is seen', async ({
  page,
}) => {
  await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
  await openState(page, 'ask-place-rules');
  const choice = page.locator('.choice').first();
  const look = () =>
    choice.evaluate((element) => {
      const { borderStyle, borderWidth, outlineStyle, borderColor } = getComputedStyle(element);
      return { borderStyle, borderWidth, outlineStyle, borderColor };
    });
  const before = await look();
  expect(before).toMatchObject({ borderStyle: 'solid', borderWidth: '2px', outlineStyle: 'none' });
  const mark = () => choice.locator('input').evaluate((input) => getComputedStyle(input, '::after').content);
  expect(await mark()).toBe('none');
  await choice.tap();
  expect(await look()).not.toEqual(before);
  expect(await mark()).not.toBe('none');
  await page.keyboard.press('Tab');
  expect(await stopNow(page)).toMatchObject({ ring: true });
  await openState(page, 'body-marked');
  const fills = await page
    .locator('.spot .ring')
    .evaluateAll((rings) => rings.map((ring) => getComputedStyle(ring).fill));
  expect(new Set(fills).size, 'marked places differ from the others').toBe(2);
});

const moving = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const all = document.getAnimations();
    return all.filter((animation) => Number(animation.effect?.getComputedTiming().duration ?? 0) > 0).length;
  });
/** Steps on, and catches what the new page sets in motion before it can come to rest. */
const stepAndLook = async (page: Page): Promise<number> => {
  await openState(page, 'ask-reason');
  await page.evaluate(() => {
    document.documentElement.dataset['moved'] = '0';
    addEventListener('animationstart', ({ elapsedTime, target }) => {
      const { animationDuration } = getComputedStyle(target as Element);
      if (Number.parseFloat(animationDuration) > 0) document.documentElement.dataset['moved'] = String(1 + elapsedTime);
    });
  });
  await page.locator('.choice').first().tap();
  await expect(page.locator('lw-question')).toHaveAttribute('data-question', 'shelf');
  await page.waitForTimeout(200);
  return Number(await page.locator('html').getAttribute('data-moved')) + (await moving(page));
};

test('nothing moves for somebody who asked for less motion', async ({ page }) => {
  expect(await stepAndLook(page)).toBe(0);
});

test('for others a new page arrives with a small movement', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  await openState(page, 'ask-reason');
  expect(await page.locator('lw-question').evaluate((element) => getComputedStyle(element).animationDuration)).toBe(
    '0.12s',
  );
});

const afterAMoment = async (page: Page) => {
  await page.waitForTimeout(200);
  return stopNow(page);
};

for (const [name, viewport] of [
  ['lying', { width: 1280, height: 800 }],
  ['low', { width: 1024, height: 600 }],
  ['upright', { width: 800, height: 1280 }],
] as const) {
  test(`${name}, no stop of the keyboard is hidden, though the foot of the result stays put`, async ({ page }) => {
    await page.setViewportSize(viewport);
    const hidden: string[] = [];
    for (const state of ['result-two-pairs', 'review', 'ask-activity']) {
      await openState(page, state);
      for (let stops = 0; stops < 60; stops += 1) {
        await page.keyboard.press('Tab');
        // A page still coming in is looked at once more when it has come to rest.
        const stop = await stopNow(page).then((at) => (at?.clear && at.ring ? at : afterAMoment(page)));
        if (!stop) break;
        if (!stop.clear || !stop.ring) hidden.push(`${state}: ${stop.name}`);
      }
    }
    expect(hidden).toEqual([]);
  });
}

test('a planted stop under the sticky foot is found', async ({ page }) => {
  await openState(page, 'result-two-pairs');
  await page.locator('.sticky').evaluate((foot) => {
    const { top, left } = foot.getBoundingClientRect();
    const button = Object.assign(document.createElement('button'), { textContent: 'under' });
    for (const [name, value] of Object.entries({
      position: 'fixed',
      top: `${top + 4}px`,
      left: `${left + 4}px`,
      width: '60px',
    })) {
      button.style.setProperty(name, value);
    }
    foot.before(button);
    button.focus();
  });
  expect(await stopNow(page)).toMatchObject({ name: 'under', clear: false });
});
