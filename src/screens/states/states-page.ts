import { tables } from 'virtual:tables';
import { html, render } from 'lit';
import flowFile from '../../../flows/fitting/flow.json';
import type { Answers } from '../../flow/answers.ts';
import type { Flow } from '../../flow/format.ts';
import { questionsOf } from '../../flow/route.ts';
import { savedInterview } from '../../interview/saved.ts';
import { memoryStore } from '../../storage/memory-store.ts';
import type { Store } from '../../storage/store.ts';
import { wordsOf } from '../../words/words-of.ts';
import type { Rest } from '../customer/ahead.ts';
import { Kiosk } from '../customer/kiosk.ts';
import { dayOf } from '../fitter/day.ts';
import { loadShop } from '../load-shop.ts';
import { setDisplay } from '../parts/display.ts';
import { firstBundles, LANGUAGES, otherBundles } from '../parts/word-files.ts';
import { loadRest } from '../rest.ts';
import { keep, type Story } from './keep.ts';
import type { ScreenState, Step } from './screen-state.ts';
import { statesOf } from './states.ts';

/**
 * The demo page: a list of every screen state, and each of them by itself under `?state=…&language=…`. What stands
 * there gives way to another when the document gets an event `show-state` whose detail is that part of an address.
 */
const flow = flowFile as unknown as Flow;
const states = statesOf(questionsOf(flow).map(({ id }) => id));
const stories = import.meta.glob<Story>('../../../flows/fitting/stories/*.json', { import: 'default' });

/** One shop, its stock read once: no state here leaves anything behind in it. */
let demo: ReturnType<typeof loadRest> | undefined;
async function restIn(language: string): Promise<Rest> {
  demo ??= loadRest(memoryStore(), '../');
  const { shop, line } = await demo;
  await line.useMarks([], dayOf(new Date()));
  // Nobody prints from here, so the PDF writer need not be made ready while the page is looked at.
  return { shop: { ...shop, language }, line: { ...line, warm: async () => {} } };
}

async function storyNamed(name: string): Promise<Story> {
  const load = stories[`../../../flows/fitting/stories/${name}.json`];
  if (!load) throw new Error(`There is no story ${name}`);
  return load();
}

const answersOf = async ({ story, answers }: ScreenState): Promise<Answers> => ({
  ...(await storyNamed(story)).answers,
  ...(answers as Answers | undefined),
});

/** A store that forgets, as the demo must, but says it lasts where the state does not say otherwise. */
async function storeFor(state: ScreenState, answers: Answers, language: string): Promise<Store> {
  const store = { ...memoryStore(), lasting: state.refused !== true };
  const interview = savedInterview(flow, { answers, at: 'wet', changing: false });
  const ticket = { word: 'heron', number: 3 };
  if (state.draft === 'kept') {
    await store.put('draft', 'draft', { interview, ticket, startedAt: new Date().toISOString(), language });
  }
  await keep(store, state.kept ?? {}, flow, storyNamed);
  if (state.draft === 'foreign') await store.put('draft', 'draft', { interview: { flow: 'another' } });
  return store;
}

const present = (within: HTMLElement, selector: string): Promise<HTMLElement> =>
  new Promise((resolve) => {
    const look = () => {
      const found = within.querySelector<HTMLElement>(selector);
      if (found) resolve(found);
      else setTimeout(look, 20);
    };
    look();
  });

async function take(step: Step, kiosk: HTMLElement): Promise<void> {
  if (typeof step === 'string') return (await present(kiosk, step)).click();
  const field = (await present(kiosk, step.into)) as HTMLInputElement;
  if ('typed' in step) field.value = step.typed;
  else {
    const given = new DataTransfer();
    given.items.add(new File([step.holds], step.file));
    field.files = given.files;
  }
  for (const type of ['input', 'change']) field.dispatchEvent(new Event(type, { bubbles: true }));
}

async function show(state: ScreenState, language: string): Promise<void> {
  const root = document.documentElement;
  root.lang = language;
  setDisplay({ text: 'normal', contrast: 'normal' });
  const answers = await answersOf(state);
  const kiosk = new Kiosk();
  kiosk.flow = flow;
  kiosk.tables = tables;
  kiosk.store = await storeFor(state, answers, language);
  kiosk.loadWords = async (wanted, all) =>
    wordsOf(wanted, [...(await firstBundles(wanted)), ...(all ? await otherBundles(wanted) : [])]);
  kiosk.loadShop = () => loadShop(kiosk.store, '../');
  // The bench speaks the fitters' language: here the one that was asked for.
  kiosk.loadRest = () => restIn(language);
  if (state.at !== 'welcome') kiosk.opening = { answers, at: state.at, changing: false };
  if (state.idle) kiosk.idleTimes = { quiet: 1, warning: 120_000 };
  document.body.replaceChildren(kiosk);
  for (const step of state.steps ?? []) await take(step, kiosk);
  // The words are fetched after the first update, so that until then the page is blank.
  await present(kiosk, state.shows ?? 'h1');
  await kiosk.updateComplete;
  root.dataset['ready'] = state.id;
}

/** Shows the state that an address asks for; false where there is none of that name. */
async function showAsked(search: string): Promise<boolean> {
  const asked = new URLSearchParams(search);
  const wanted = states.find(({ id }) => id === asked.get('state'));
  delete document.documentElement.dataset['ready'];
  if (wanted) await show(wanted, asked.get('language') ?? 'en');
  return wanted !== undefined;
}
document.addEventListener('show-state', (event) => void showAsked((event as CustomEvent<string>).detail));

if (!(await showAsked(location.search))) {
  render(
    html`<main class="page">
      <h1>Every screen</h1>
      ${LANGUAGES.map(
        (each) => html`<h2>${each}</h2>
          <ul>
            ${states.map(({ id }) => html`<li><a href=${`?state=${id}&language=${each}`}>${id}</a></li>`)}
          </ul>`,
      )}
    </main>`,
    document.body,
  );
}
