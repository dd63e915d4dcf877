import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, type Page, test } from '@playwright/test';
import type { Answer, Answers } from '../../src/flow/answers.ts';
import { BROWSER_ARGUMENTS, findBrowser } from './find-browser.ts';
import { plantDraft, storedDraft } from './stored.ts';
import { answerQuestion, flow, storyNamed, tap, walkInterview } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

const { answers } = storyNamed('netball-old-sprain');
const quick = storyNamed('same-again').answers;
/** A story leaves out what its visitor does not mind; the screen says so for each row left alone. */
const whole = (answer: Answer | undefined): Answer | undefined => {
  const liking = flow.sections.flatMap(({ questions }) => questions).find(({ id }) => id === 'liking');
  if (answer !== answers['liking'] || liking?.kind !== 'against-today') return answer;
  return { ...Object.fromEntries(liking.properties.map(({ id }) => [id, 'no-preference'])), ...Object(answer) };
};
const of = (ids: readonly string[], story: Answers = answers) =>
  Object.fromEntries(ids.map((id) => [id, whole(story[id])]));

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const question = (page: Page) => page.locator('lw-question');
const carryOn = async (page: Page): Promise<void> => {
  await expect(page.getByRole('heading', { name: 'Carry on where you were?' })).toBeVisible();
  await tap(button(page, 'Carry on'));
};
/** From review on: the result, handed to the fitter, and the kiosk free again. */
async function finish(page: Page): Promise<void> {
  await tap(page.locator('lw-review ~ .foot .main'));
  await tap(page.locator('[data-act="hand"]'));
  await tap(page.locator('[data-act="handYes"]'));
  await tap(page.locator('[data-act="done"]'));
  await expect(button(page, 'Start')).toBeVisible();
}

test('a page loaded anew at every question goes on at the same place with the same answers', async ({ page }) => {
  const passed: string[] = [];
  await page.goto('');
  await walkInterview(page, quick, 'en', tap, {
    at: async (id) => {
      await page.reload();
      await carryOn(page);
      await expect(question(page)).toHaveAttribute('data-question', id);
      expect((await storedDraft(page))?.interview.answers).toEqual(of(passed, quick));
      passed.push(id);
    },
  });
  await page.reload();
  await carryOn(page);
  await expect(page.locator('lw-review dt')).toHaveCount(passed.length);
});

/** What stands in the page stands on the glass too: before that no answer is shown as taken. */
const painted = (page: Page): Promise<void> =>
  page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve))));

const DEATHS = 10;
/** Kills the browser that runs in this folder of its own, as a tablet that is switched off would. */
function kill(folder: string): void {
  const processes = execFileSync('ps', ['-A', '-ww', '-o', 'pid=,args='], { encoding: 'utf8' }).split('\n');
  const own = processes.filter((line) => line.includes(`--user-data-dir=${folder}`) && !line.includes('--type='));
  expect(own.length, 'the browser is found').toBeGreaterThan(0);
  for (const line of own) process.kill(Number.parseInt(line, 10), 'SIGKILL');
}

test('a tablet that dies ten times in mid-interview loses no answer that was shown as taken', async ({ baseURL }) => {
  test.slow();
  const folder = mkdtempSync(join(tmpdir(), 'kiosk-profile-'));
  const open = async () => {
    const context = await chromium.launchPersistentContext(folder, {
      executablePath: findBrowser(),
      args: BROWSER_ARGUMENTS,
      hasTouch: true,
      locale: 'en-GB',
      reducedMotion: 'reduce',
    });
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(baseURL ?? '');
    return { context, page };
  };
  const passed: string[] = [];
  const answerNext = async (page: Page): Promise<void> => {
    const here = await question(page).getAttribute('data-question');
    if (here === null) throw new Error('No question is shown');
    await answerQuestion(page, here, answers[here], 'en');
    await page.waitForFunction((was) => !document.querySelector(`[data-question="${was}"]`), here);
    await painted(page);
    passed.push(here);
  };
  const all = Object.keys(answers).length;
  for (let dies = 0; dies < DEATHS; dies += 1) {
    const { context, page } = await open();
    if (dies === 0) await tap(button(page, 'Start'));
    else await carryOn(page);
    await question(page).waitFor();
    expect((await storedDraft(page))?.interview.answers, `after ${dies} deaths`).toEqual(of(passed));
    const gone = new Promise((resolve) => context.on('close', resolve));
    // Every kind of question is answered and found again, and each death but the last comes between two.
    while (passed.length < ((dies + 1) * all) / DEATHS) await answerNext(page);
    kill(folder);
    await gone;
  }
  const { context, page } = await open();
  await carryOn(page);
  expect((await storedDraft(page))?.interview.answers).toEqual(of(passed));
  await expect(page.locator('lw-review dt')).toHaveCount(all);
  await context.close();
  rmSync(folder, { recursive: true, force: true });
});

for (const [kind, record] of [
  ['broken', 'no record at all'],
  [
    'foreign',
    { interview: { flow: 'another', flowVersion: 1, format: 1, answers: { reason: 'worn-out' }, place: 'wet' } },
  ],
] as const) {
  test(`a ${kind} draft is said, dropped, and followed by a clean interview`, async ({ page }) => {
    await page.goto('');
    await button(page, 'Start').waitFor();
    await plantDraft(page, record);
    await page.reload();
    await expect(page.getByRole('status')).toHaveText('Some saved answers could not be read. We start fresh.');
    await expect(button(page, 'Carry on')).toHaveCount(0);
    expect(await storedDraft(page)).toBeUndefined();
    await tap(button(page, 'Start'));
    await expect(question(page)).toHaveAttribute('data-question', 'reason');
    await expect(page.locator('[aria-pressed="true"]')).toHaveCount(0);
    expect((await storedDraft(page))?.interview.answers).toEqual({});
  });
}

test('a finished visit leaves no draft behind, and nothing brings it back', async ({ page }) => {
  await page.goto('');
  await walkInterview(page, quick);
  await finish(page);
  expect(await storedDraft(page)).toBeUndefined();
  await page.waitForTimeout(400);
  expect(await storedDraft(page)).toBeUndefined();
  await page.reload();
  await expect(button(page, 'Start')).toBeVisible();
  await expect(button(page, 'Carry on')).toHaveCount(0);
});

const CANNOT_SAVE = 'This tablet cannot save. If it is switched off, you start again.';

test('a browser that refuses storage still takes a customer to the result, and says so', async ({ page }) => {
  await page.addInitScript(() => {
    indexedDB.open = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  });
  await page.goto('');
  await expect(page.getByRole('status')).toHaveText(CANNOT_SAVE);
  await walkInterview(page, quick);
  await finish(page);
  await expect(page.getByRole('status')).toHaveText(CANNOT_SAVE);
});

test('a store that fills up in mid-interview stops nobody, and is said at the next welcome', async ({ page }) => {
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    IDBObjectStore.prototype.delete = () => {
      throw new DOMException('broken', 'InvalidStateError');
    };
  });
  await page.goto('');
  await walkInterview(page, quick);
  await finish(page);
  await expect(page.getByRole('status')).toHaveText(CANNOT_SAVE);
});

/**
 * Two taps of one finger on one spot, as fast as a person's. The second comes when the page has turned, stamped as a
 * finger would have made it, however long this machine took meanwhile.
 */
async function doubleTap(page: Page, x: number, y: number): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  const before = await question(page).getAttribute('data-question');
  const first = Date.now() / 1000;
  const tapAt = async (timestamp: number): Promise<void> => {
    await devtools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }], timestamp });
    await devtools.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [], timestamp: timestamp + 0.03 });
  };
  await tapAt(first);
  await expect(question(page)).not.toHaveAttribute('data-question', before ?? '');
  await tapAt(first + 0.15);
  await page.waitForTimeout(100);
}

test('a double tap on a choice answers one question', async ({ page }) => {
  await page.goto('');
  await tap(button(page, 'Start'));
  await expect(question(page)).toHaveAttribute('data-question', 'reason');
  const box = await page.locator('.choice').nth(2).boundingBox();
  await doubleTap(page, (box?.x ?? 0) + 60, (box?.y ?? 0) + 30);
  await expect(question(page)).toHaveAttribute('data-question', 'shelf');
  expect(Object.keys((await storedDraft(page))?.interview.answers ?? {})).toEqual(['reason']);
  // What stood under the second tap is taken as soon as it is meant.
  await page.waitForTimeout(500);
  await page.touchscreen.tap((box?.x ?? 0) + 60, (box?.y ?? 0) + 30);
  await expect(question(page)).toHaveAttribute('data-question', 'age-band');
});

test('two quick taps on “None of these” pass one page', async ({ page }) => {
  await page.goto('');
  await walkInterview(page, answers, 'en', tap, { until: 'floors' });
  // On the pages around it the same button stands in the same place.
  await answerQuestion(page, 'floors', answers['floors'], 'en');
  await tap(button(page, 'Back'));
  await tap(button(page, 'Back'));
  await expect(question(page)).toHaveAttribute('data-question', 'lately');
  const box = await button(page, 'None of these').boundingBox();
  await doubleTap(page, (box?.x ?? 0) + 30, (box?.y ?? 0) + 20);
  await expect(question(page)).toHaveAttribute('data-question', 'floors');
});

test('two answers in the same moment are one answer', async ({ page }) => {
  await page.goto('');
  await tap(button(page, 'Start'));
  await expect(question(page)).toHaveAttribute('data-question', 'reason');
  await page.evaluate(() => {
    for (const choice of [...document.querySelectorAll<HTMLElement>('.choice')].slice(0, 2)) choice.click();
  });
  await expect(question(page)).toHaveAttribute('data-question', 'shelf');
  // The page is painted first and written down after.
  await expect.poll(async () => (await storedDraft(page))?.interview.answers).toEqual({ reason: 'new-activity' });
});

test('going back all the way loses no answer, and going on finds each as it was', async ({ page }) => {
  await page.goto('');
  const { screens } = await walkInterview(page, answers, 'en', tap, { until: 'conditions' });
  const given = (await storedDraft(page))?.interview.answers;
  for (const id of [...screens].reverse()) {
    await tap(button(page, 'Back'));
    await expect(question(page)).toHaveAttribute('data-question', id);
  }
  expect((await storedDraft(page))?.interview.answers).toEqual(given);
  await expect(page.locator('[aria-pressed="true"]')).toHaveText('My pair is worn out');
  await walkForward(page, screens);
  expect((await storedDraft(page))?.interview.answers).toEqual(given);
});

/** On by what is already chosen: the pressed choice, or Continue with every tick as it stood. */
async function walkForward(page: Page, screens: readonly string[]): Promise<void> {
  for (const id of screens) {
    await expect(question(page)).toHaveAttribute('data-question', id);
    const pressed = page.locator('main [aria-pressed="true"]');
    if ((await pressed.count()) === 0) {
      await answerOrContinue(page, id);
      continue;
    }
    const grouped = (await page.locator('input[type="search"]').count()) > 0;
    await tap(pressed.first());
    if (grouped && (await page.locator('.inner').count()) > 0) await tap(pressed.first());
  }
}

async function answerOrContinue(page: Page, id: string): Promise<void> {
  const onward = button(page, 'Continue');
  if ((await onward.count()) > 0 && (await onward.isEnabled())) {
    await tap(onward);
    if (id === 'floors' && (await page.locator('.inner').count()) > 0) await tap(onward);
  } else await answerQuestion(page, id, answers[id], 'en');
}
