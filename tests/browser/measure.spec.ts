import { expect, type Page, test } from '@playwright/test';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Observation } from '../../src/observation/observation.ts';
import { axeFindsNothing, WCAG } from './axe-faults.ts';
import { openMeasureSite } from './measure-site.ts';

let site: Awaited<ReturnType<typeof openMeasureSite>>;
test.beforeAll(async () => {
  site = await openMeasureSite();
});
test.afterAll(() => site.close());

type Told = { readonly observation: readonly Observation[]; readonly tryOns: readonly (readonly object[])[] };
const last = (page: Page): Promise<Observation | undefined> =>
  page.evaluate(() => (window as unknown as { told: Told }).told.observation.at(-1));
const lastTryOns = (page: Page) => page.evaluate(() => (window as unknown as { told: Told }).told.tryOns.at(-1));
const field = (page: Page, name: string) => page.locator(`input[name="${name}"]`);
const said = (page: Page, name: string) => page.locator(`#${name}-said`);
const type = async (page: Page, name: string, text: string): Promise<void> => {
  await field(page, name).fill(text);
  await field(page, name).blur();
};
const choose = (page: Page, name: string, value: string) =>
  page.locator(`label:has(input[name="${name}"][value="${value}"])`).tap();
/** This page stands alone, so that what axe calls good practice for whole pages holds for it too. */
const clean = (page: Page) => axeFindsNothing(page, [...WCAG, 'best-practice']);

test('two feet are measured in three units, said back, and lead to a size', async ({ page }) => {
  await page.goto(site.url);
  await type(page, 'length-left', '26,2 cm');
  await expect(said(page, 'length-left')).toHaveText('26.2 cm → 262 mm');
  await type(page, 'length-right', '10 1/2 in');
  await expect(said(page, 'length-right')).toContainText('266.7 mm');
  await type(page, 'ballGirth-right', '255');
  expect((await last(page))?.feet).toEqual({
    left: { length: 262 },
    right: { length: 266.7, ballGirth: 255 },
    posture: 'standing',
    sock: 'worn-sock',
  });
  const aside = page.locator('lw-size-said');
  await expect(aside.locator('[data-code="right-longer"]')).toContainText('4.7 mm longer');
  await expect(aside.locator('[data-row="foot"]')).toContainText('266.7 mm');
  await expect(aside.locator('.also')).toContainText('Some makers label this EU');
  await expect(aside.locator('[data-row="width-z"]')).toContainText('by girth');
  await expect(aside.locator('[data-row="letter"]')).toBeVisible();
  await clean(page);

  await page.locator('.undo').tap();
  await expect(field(page, 'ballGirth-right')).toHaveValue('');
  expect((await last(page))?.feet?.right).toEqual({ length: 266.7 });
  await choose(page, 'measure-unit', 'cm');
  await expect(field(page, 'length-left')).toHaveValue('26.2');
});

test('odd input is asked about in exact words and counts for nothing until somebody says so', async ({ page }) => {
  await page.goto(site.url);
  await type(page, 'length-left', '26');
  await expect(said(page, 'length-left')).toContainText('Did you mean 26 cm?');
  expect(await last(page)).toBeUndefined();
  await said(page, 'length-left').getByRole('button').tap();
  await expect(said(page, 'length-left')).toHaveText('26 cm → 260 mm');
  await type(page, 'length-left', 'about thirty');
  await expect(said(page, 'length-left')).toContainText('260 mm still counts.');
  expect((await last(page))?.feet?.left).toEqual({ length: 260 });

  await type(page, 'length-left', '225');
  await type(page, 'length-right', '265');
  const apart = page.locator('[data-code="feet-far-apart"]');
  await expect(apart).toContainText('40 mm apart');
  await expect(page.locator('[data-row="foot"]')).not.toContainText('265 mm');
  await apart.locator('label').tap();
  expect((await last(page))?.feet?.checked).toBe(true);
  await expect(page.locator('[data-row="foot"]')).toContainText('265 mm');

  await type(page, 'ballGirth-left', '95');
  await type(page, 'width-left', '98');
  await expect(said(page, 'ballGirth-left')).toContainText('shorter than the foot is wide');
  await expect(field(page, 'ballGirth-left')).toHaveAttribute('aria-invalid', 'true');
  await type(page, 'length-right', '180');
  await type(page, 'length-left', '182');
  await expect(page.locator('[data-code="short-for-shelf"]')).toContainText('junior shelf');
  await clean(page);
});

test('the old pair is noted, figures that cannot be are asked about, and a look at the roll needs a name', async ({
  page,
}) => {
  await page.goto(site.url);
  await page.locator('[data-part="old-pair"]').tap();
  await expect(page.locator('#measure-part')).toBeFocused();
  await type(page, 'old-pair-insoleLength', '280');
  await type(page, 'old-pair-toePrintGap', '6');
  await choose(page, 'old-pair-heelLining', 'torn');
  await expect(page.locator('.notes li')).toHaveText([
    'The toes had little room in the old pair.',
    'The lining at the heel is torn.',
  ]);
  await expect(page.locator('[data-row="from"]')).toContainText('insole');
  for (const [figure, text] of [
    ['heel-stack', '30'],
    ['forefoot-stack', '24'],
    ['drop', '12'],
  ] as const) {
    await type(page, `old-pair-${figure}`, text);
  }
  await expect(page.locator('lw-measure-old-pair .said')).toContainText('do not make a drop of 12 mm');
  await clean(page);

  await page.locator('[data-part="roll"]').tap();
  await choose(page, 'roll-left', 'in');
  expect(await last(page)).not.toHaveProperty('roll');
  await type(page, 'roll-by', 'Robin');
  expect((await last(page))?.roll).toEqual({ left: 'in', right: 'not-told', by: 'Robin', during: 'walk' });
  await clean(page);
});

test('after falls the roll is looked at in a walk only', async ({ page }) => {
  await page.goto(`${site.url}?story=older-walker-after-fall`);
  await page.locator('[data-part="roll"]').tap();
  await expect(page.locator('lw-measure-roll [data-held]')).toBeVisible();
  await expect(page.locator('input[name="roll-during"]')).toHaveCount(1);
});

test('the printed sheet corrects its readings, and is refused past 5 per cent', async ({ page }) => {
  await page.goto(site.url);
  await page.locator('[data-part="sheet"]').tap();
  await type(page, 'sheet-left', '270');
  await type(page, 'sheet-line', '97');
  await expect(page.locator('lw-measure-sheet [data-side="left"]')).toContainText('261.9 mm counts');
  expect((await last(page))?.feet?.left).toEqual({ length: 261.9 });
  await type(page, 'sheet-line', '94');
  await expect(page.locator('lw-measure-sheet .said.error')).toContainText('Print the sheet again at full size');
  expect((await last(page))?.feet).not.toHaveProperty('left');
  await clean(page);
});

/** Points of a PDF are 1/72 inch. */
const POINT = 25.4 / 72;
for (const [paper, width, height] of [
  ['a4', 210, 297],
  ['letter', 215.9, 279.4],
] as const) {
  test(`the sheet printed on ${paper} has a check line of 100.0 mm within 0.3 mm`, async ({ page }) => {
    await page.addInitScript(() => {
      const make = URL.createObjectURL.bind(URL);
      URL.createObjectURL = (blob: Blob) => {
        void blob.text().then((text) => {
          (window as unknown as { printed: string }).printed = text;
        });
        return make(blob);
      };
      // Headless printing shows no dialog, and its page would be gone before it can be looked at.
      window.print = () => undefined;
    });
    await page.goto(site.url);
    await page.locator('[data-part="sheet"]').tap();
    await choose(page, 'sheet-paper', paper);
    await page.getByRole('button', { name: 'Print the sheet' }).tap();
    const printed = await page.waitForFunction(() => (window as unknown as { printed?: string }).printed);
    const html = String(await printed.jsonValue());
    await page.route('**/printed.html', (route) => route.fulfill({ contentType: 'text/html', body: html }));
    await page.goto(`${site.url}printed.html`);
    const pdf = await getDocument({ data: new Uint8Array(await page.pdf({ preferCSSPageSize: true })) }).promise;
    expect(pdf.numPages).toBe(1);
    const sheet = await pdf.getPage(1);
    const [, , right = 0, top = 0] = sheet.view;
    expect(Math.abs(right * POINT - width)).toBeLessThan(0.5);
    expect(Math.abs(top * POINT - height)).toBeLessThan(0.5);
    const lines = await linesOf(sheet);
    const level = lines.filter(({ x1, y1, x2, y2 }) => Math.abs(y1 - y2) < 0.05 && Math.abs(x1 - x2) > 50);
    expect(level).toHaveLength(1);
    const [check] = level;
    const long = Math.abs((check?.x1 ?? 0) - (check?.x2 ?? 0));
    test.info().annotations.push({ type: 'check line', description: `${long.toFixed(3)} mm` });
    expect(Math.abs(long - 100)).toBeLessThan(0.3);
    // The ruler itself: 320 mm along the diagonal.
    const ruler = Math.max(...lines.map(({ x1, y1, x2, y2 }) => Math.hypot(x1 - x2, y1 - y2)));
    expect(Math.abs(ruler - 320)).toBeLessThan(0.9);
  });
}

type Line = Readonly<Record<'x1' | 'y1' | 'x2' | 'y2', number>>;
type Matrix = readonly [number, number, number, number, number, number];
const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];

/** Every stroked path of one stretch, end to end, in millimetres of paper. */
async function linesOf(
  sheet: Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>,
): Promise<readonly Line[]> {
  const { fnArray, argsArray } = await sheet.getOperatorList();
  const stack: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  const lines: Line[] = [];
  fnArray.forEach((operator: number, at: number) => {
    const args = argsArray[at];
    if (operator === OPS.save) stack.push(matrix);
    else if (operator === OPS.restore) matrix = stack.pop() ?? matrix;
    else if (operator === OPS.transform) matrix = times(matrix, args as Matrix);
    else if (operator === OPS.constructPath && args[0] === OPS.stroke) {
      const data = Array.from(args[1][0] as ArrayLike<number>);
      // Two commands with a point each: move there, draw to here.
      if (data.length !== 6) return;
      const [, x1 = 0, y1 = 0, , x2 = 0, y2 = 0] = data;
      const place = (x: number, y: number) => [
        (matrix[0] * x + matrix[2] * y + matrix[4]) * POINT,
        (matrix[1] * x + matrix[3] * y + matrix[5]) * POINT,
      ];
      const [a = 0, b = 0] = place(x1, y1);
      const [c = 0, d = 0] = place(x2, y2);
      lines.push({ x1: a, y1: b, x2: c, y2: d });
    }
  });
  return lines;
}

test('three pairs are tried: a wrong size leads to the next box, and the customer’s order is tapped', async ({
  page,
}) => {
  await page.goto(`${site.url}?show=try-on`);
  await choose(page, 'try-on-size', 'too-small');
  const next = page.locator('[data-next]');
  await expect(next).toContainText('Fetch the next size up: EU');
  const box = await next.getAttribute('data-next');
  await next.getByRole('button').tap();
  expect(await lastTryOns(page)).toMatchObject([{ size: 'too-small' }, { box, notes: {} }]);
  await choose(page, 'try-on-heel', 'holds');
  await page.locator('label:has(input[name="rub-left-heel"])').tap();
  await page.locator('[data-spot="right-little-toe"] .ring').tap();
  await expect(field(page, 'rub-right-little-toe')).toBeChecked();
  await type(page, 'try-on-comfort', '700');
  await expect(page.locator('#comfort-said')).toContainText('0 to 100');
  await type(page, 'try-on-comfort', '70');
  await page.locator('[data-pair]').nth(1).tap();
  await expect(page.locator('#try-on-pair')).toBeFocused();
  await type(page, 'try-on-comfort', '64');

  const names = await page.locator('.to-rank button').allTextContents();
  for (const at of [2, 0, 0]) await page.locator('.to-rank button').nth(at).tap();
  await expect(page.locator('.ranked li')).toHaveCount(3);
  await page
    .getByRole('button', { name: /^Move .* up$/ })
    .nth(1)
    .tap();
  const third = (names[2] ?? '').trim().slice(1).trim();
  await expect(page.locator('.ranked li').nth(1)).toContainText(third);
  await expect(page.locator('.same')).toContainText('feel about the same');
  await clean(page);
});

test('after falls nobody hops, and nobody wears two different shoes', async ({ page }) => {
  await page.goto(`${site.url}?show=try-on&story=older-walker-after-fall`);
  await expect(page.locator('lw-pair-record [data-even]')).toBeVisible();
  await expect(field(page, 'uneven')).toHaveCount(0);
  const tasks = await page
    .locator('[data-task]')
    .evaluateAll((all) => all.map((each) => each.getAttribute('data-task')));
  expect(tasks.length).toBeGreaterThan(0);
  for (const task of tasks) expect(['walk', 'stand-still', 'stand-firm', 'pedal-press']).toContain(task);
  await clean(page);
});

test('everything is reached and read in a narrow window, in German, with large type', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  for (const show of ['measure', 'try-on']) {
    await page.goto(`${site.url}?show=${show}&language=de`);
    await page.locator('.parts-bar').waitFor();
    for (const part of show === 'measure' ? ['old-pair', 'roll', 'sheet', 'feet'] : []) {
      await page.locator(`[data-part="${part}"]`).tap();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await clean(page);
  }
});
