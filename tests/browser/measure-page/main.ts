import { render } from 'lit';
import stockList from '../../../demo/stock.csv?raw';
import type { Shop } from '../../../src/card/shop.ts';
import type { Observation } from '../../../src/observation/observation.ts';
import { lineOf } from '../../../src/pipeline.ts';
import type { MeasureScreen } from '../../../src/screens/fitter/measure/measure.ts';
import { knowledge } from '../../../src/worker/knowledge.ts';
import '../../../src/screens/fitter/measure/measure.ts';
import type { TryOnScreen } from '../../../src/screens/fitter/try-on/try-on.ts';
import '../../../src/screens/fitter/try-on/try-on.ts';
import { undoButton } from '../../../src/screens/fitter/undo-button.ts';
import '../../../src/screens/look/kiosk.css';
import { firstBundles, otherBundles } from '../../../src/screens/parts/word-files.ts';
import { readStock } from '../../../src/stock/read-csv.ts';
import type { TryOn, Visit } from '../../../src/visit/visit.ts';
import { wordsOf } from '../../../src/words/words-of.ts';
import { storyVisit } from './story-visit.ts';

/**
 * The two screens on a page of their own, as the bench holds them: `?show=try-on&language=de&story=older-walker-after-fall`.
 * Every change of the visit works out the line anew and hands it back.
 */
const asked = new URLSearchParams(location.search);
const language = asked.get('language') ?? 'en';
document.documentElement.lang = language;
const words = wordsOf(language, [...(await firstBundles(language)), ...(await otherBundles(language))]);
const { value: stock } = readStock(stockList, { asOf: '2026-11-25T09:12' });
if (!stock) throw new Error('The demo stock could not be read');
const main = document.querySelector('main') as HTMLElement;

let visit: Visit = await storyVisit(asked.get('story') ?? 'padel-thirds');
const told: { observation: Observation[]; tryOns: (readonly TryOn[])[] } = { observation: [], tryOns: [] };
Object.assign(window, { told });

function show(): void {
  const line = lineOf(visit, knowledge, stock as NonNullable<typeof stock>, 1);
  Object.assign(measure, { visit, facts: line.profile.facts, advice: line.profile.size });
  Object.assign(tryOn, {
    visit,
    line,
    boxesOf: async (shoe: string) => stock?.boxes.filter((box) => box.shoe === shoe) ?? [],
  });
}

const measure: MeasureScreen = document.createElement('lw-measure') as MeasureScreen;
const tryOn: TryOnScreen = document.createElement('lw-try-on') as TryOnScreen;
const shop: Pick<Shop, 'kit'> = { kit: (asked.get('kit') ?? 'ramp,mat,rope,box,treadmill').split(',') };
Object.assign(measure, { words });
Object.assign(tryOn, { words, shop });
measure.addEventListener('observation', (event) => {
  const observation = (event as CustomEvent<Observation>).detail;
  told.observation.push(observation);
  visit = { ...visit, observation };
  show();
});
tryOn.addEventListener('try-ons', (event) => {
  const tryOns = (event as CustomEvent<readonly TryOn[]>).detail;
  told.tryOns.push(tryOns);
  visit = { ...visit, tryOns };
  show();
});
show();
main.className = 'page';
main.innerHTML = '<h1></h1>';
(main.firstElementChild as HTMLElement).textContent = document.title;
const shown = asked.get('show') === 'try-on' ? tryOn : measure;
const bar = main.appendChild(document.createElement('div'));
shown.addEventListener('last-step', (event) => {
  const what = (event as CustomEvent<string>).detail;
  render(
    undoButton(what !== '', what, () => shown.undo(), words),
    bar,
  );
});
main.append(shown);
