import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import type { Answer, Answers, BodyMap, Quantity } from '../../src/flow/answers.ts';
import type { Flow, Question } from '../../src/flow/format.ts';
import { spelledOptions } from '../../src/flow/options.ts';
import { moneyText } from '../../src/units/money-text.ts';

const read = (path: string) => JSON.parse(readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8'));
export const flow: Flow = read('flows/fitting/flow.json');
const shop: { readonly currency: string } = read('demo/shop.json');
export const storyNamed = (name: string): { answers: Answers } => read(`flows/fitting/stories/${name}.json`);
export const words = (language: string) => ({
  flow: read(`flows/fitting/words.${language}.json`),
  screen: read(`flows/words/${language}/interview.json`).screen,
});

/** How a person acts on the screen: by finger, or by keyboard. */
export type Act = (on: Locator) => Promise<void>;
/** How a person fills a text field. */
export type Type = (on: Locator, text: string) => Promise<void>;

/** Two taps nearer than this, CSS pixels and milliseconds, may be taken for one double tap. */
const ONE_SPOT = 30;
const ONE_MOMENT = 450;
/** How far bringing a button into view may shift the foot that stays put, CSS pixels. Measured here: 32. */
const SLIDE = 40;
let last = { x: 0, y: 0, at: 0 };
/** By finger, faster than any person, but never twice on one spot within a moment: beside it, or after it. */
export const tap: Act = async (on) => {
  const box = await on.evaluate((target) => {
    target.scrollIntoView({ block: 'nearest' });
    const { left, top, width, height } = target.getBoundingClientRect();
    return { left, top, width, height };
  });
  const y = box.height / 2;
  // A foot that stays put is measured before it has come to rest.
  const free = (x: number) =>
    Math.abs(box.left + x - last.x) >= ONE_SPOT || Math.abs(box.top + y - last.y) >= ONE_SPOT + SLIDE;
  const x = [1 / 2, 1 / 4, 3 / 4].map((share) => box.width * share).find(free) ?? box.width / 2;
  const since = Date.now() - last.at;
  if (!free(x) && since < ONE_MOMENT) await on.page().waitForTimeout(ONE_MOMENT - since);
  await on.tap({ position: { x, y } });
  last = { x: box.left + x, y: box.top + y, at: Date.now() };
};
export const fill: Type = (on, text) => on.fill(text);

/** Taps counted, to be told beside the number of screens. */
export interface Walked {
  readonly screens: readonly string[];
  readonly taps: number;
}

export interface Walk {
  readonly type?: Type;
  /** Stops there with the question unanswered, instead of at review. */
  readonly until?: string;
  /** Goes on from the question shown, instead of from the welcome. */
  readonly begun?: boolean;
  /** Looks at each question before it is answered. */
  readonly at?: (question: string) => Promise<void>;
}

/** Answers the interview as one story would, from the welcome to review; returns what was met on the way. */
export async function walkInterview(
  page: Page,
  answers: Answers,
  language = 'en',
  act: Act = tap,
  walk: Walk = {},
): Promise<Walked> {
  let count = 0;
  const counted: Act = async (on) => {
    count += 1;
    await act(on);
  };
  const screens: string[] = [];
  if (!walk.begun) {
    await counted(page.getByRole('button', { name: words(language).screen.welcome.start, exact: true }));
  }
  while (true) {
    const here = page.locator('lw-question, lw-review, lw-outcome').first();
    await here.waitFor();
    const id = await here.getAttribute('data-question');
    if (id === null || id === walk.until) break;
    screens.push(id);
    await walk.at?.(id);
    await answerQuestion(page, id, answers[id], language, counted, walk.type);
    await page.waitForFunction((was) => document.querySelector(`lw-question[data-question="${was}"]`) === null, id);
  }
  return { screens, taps: count };
}

/** Gives one answer on the question shown. */
export async function answerQuestion(
  page: Page,
  id: string,
  answer: Answer | undefined,
  language: string,
  act: Act = tap,
  type: Type = fill,
): Promise<void> {
  if (answer === undefined) throw new Error(`The story has no answer to ${id}`);
  const question = flow.sections.flatMap(({ questions }) => questions).find((each) => each.id === id) as Question;
  const { flow: flowWords, screen } = words(language);
  const own = flowWords.question[id];
  const rows = { activities: 'activity', floors: 'floor', 'shoe-kinds': 'shoe-kind' } as const;
  const label = (option: string): string => {
    const sum = spelledOptions(question).find((each) => each.id === option)?.sum;
    const said: string =
      own.option?.[option] ??
      ('options' in question && 'table' in question.options
        ? flowWords[rows[question.options.table]][option]
        : undefined);
    return sum === undefined ? said : said.replace(String(sum), moneyText(sum, shop.currency, language));
  };
  const scope = page.locator('lw-question');
  const button = (name: string) => scope.getByRole('button', { name, exact: true });
  const onward = () => act(button(screen.continue));
  const standing = 'options' in question ? standingAlone(question, answer) : undefined;
  if (standing !== undefined) return act(button(label(standing)));
  switch (question.kind) {
    case 'one-of': {
      const group = await groupOf(question, String(answer), scope, flowWords);
      if (group) await act(button(group));
      return act(button(label(String(answer))));
    }
    case 'yes-no':
      return act(button(answer === 'not-sure' ? screen.notSure : screen[String(answer)]));
    case 'some-of':
      for (const option of answer as readonly string[]) await act(tile(scope, option));
      return onward();
    case 'shares':
      return shares(question.id, scope, answer as Readonly<Record<string, string>>, act, onward);
    case 'number': {
      if (answer === 'not-sure') return act(button(screen.notSure));
      const { value, unit } = answer as Quantity;
      await act(scope.locator(`label:has(input[value="${unit}"])`));
      await type(scope.locator('input[type="text"]'), String(value));
      return onward();
    }
    case 'against-today':
      for (const [property, choice] of Object.entries(answer as Readonly<Record<string, string>>)) {
        if (choice === 'no-preference') continue;
        await act(scope.locator(`label:has(input[name="against-${property}"][value="${choice}"])`));
      }
      return onward();
    case 'signs': {
      for (const sign of answer as readonly string[]) {
        await act(scope.locator(`[data-sign="${sign}"]`));
        await act(scope.locator('.confirm').getByRole('button', { name: screen.yes, exact: true }));
      }
      return onward();
    }
    case 'body-map':
      if (typeof answer === 'string') return act(button(screen.skipBody));
      if (Object.keys(answer).length === 0) return act(button(screen.nothingHurts));
      for (const [region, mark] of Object.entries(answer as BodyMap)) {
        await act(tile(scope, region));
        await act(scope.locator(`label:has(input[name="when-${region}"][value="${mark.when}"])`));
        await act(scope.locator(`label:has(input[name="seen-${region}"][value="${mark.seen}"])`));
      }
      return onward();
  }
}

/** "None of these" and its like, where ticks are asked for: a button that answers at once. */
function standingAlone(question: Question, answer: Answer): string | undefined {
  if (question.kind === 'one-of' || typeof answer !== 'object') return undefined;
  const given = Array.isArray(answer) ? answer : Object.keys(answer);
  return spelledOptions(question).find(({ id, alone }) => alone && given.includes(id))?.id;
}

const tile = (scope: Locator, option: string): Locator => scope.locator(`label:has(input[name="${option}"])`);

async function shares(
  question: string,
  scope: Locator,
  answer: Readonly<Record<string, string>>,
  act: Act,
  onward: () => Promise<void>,
): Promise<void> {
  for (const option of Object.keys(answer)) await act(tile(scope, option));
  // One floor alone leads on at once; else the next page asks how often.
  if (Object.keys(answer).length > (question === 'floors' ? 1 : 0)) await onward();
  for (const [option, share] of Object.entries(answer)) {
    const radio = scope.locator(`label:has(input[name="share-${option}"][value="${share}"])`);
    if ((await radio.count()) > 0 && !(await radio.locator('input').isChecked())) await act(radio);
  }
  return onward();
}

async function groupOf(
  question: Question,
  option: string,
  scope: Locator,
  flowWords: Readonly<Record<string, Readonly<Record<string, string>>>>,
): Promise<string | undefined> {
  if (!('options' in question) || !('table' in question.options)) return undefined;
  if ((await scope.locator('input[type="search"]').count()) === 0) return undefined;
  const table = question.options.table;
  const rows: readonly { id: string; group: string }[] = read(`flows/fitting/${table}.json`);
  const group = rows.find(({ id }) => id === option)?.group;
  if (!group) return undefined;
  return flowWords[table === 'activities' ? 'activity-group' : 'shoe-kind-group']?.[group];
}

/** From the result to the card on the screen; health notes stay off it, where they are asked about. */
export async function openCard(page: Page, act: Act = tap): Promise<void> {
  const no = page.locator('[data-act="healthNo"]');
  await act(page.locator('[data-act="card"]'));
  await page.locator('[data-act="healthNo"], [data-act="save"]').first().waitFor();
  if (await no.isVisible()) await act(no);
  await page.locator('[data-act="save"]').waitFor();
}
