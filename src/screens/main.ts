import { tables } from 'virtual:tables';
import flow from '../../flows/fitting/flow.json';
import type { Flow } from '../flow/format.ts';
import { openStore } from '../storage/browser-store.ts';
import { wordsOf } from '../words/words-of.ts';
import { Kiosk } from './customer/kiosk.ts';
import { quiet } from './parts/quiet.ts';
import { firstBundles, LANGUAGES, otherBundles } from './parts/word-files.ts';

/** The language asked for in the address, or the browser's, or English. */
const wanted = [new URLSearchParams(location.search).get('language') ?? '', ...navigator.languages]
  .map((language) => language.slice(0, 2))
  .find((language) => LANGUAGES.includes(language));
document.documentElement.lang = wanted ?? 'en';

const kiosk = new Kiosk();
kiosk.flow = flow as unknown as Flow;
kiosk.tables = tables;
kiosk.openStore = openStore;
kiosk.loadWords = async (language, all) =>
  wordsOf(language, [...(await firstBundles(language)), ...(all ? await otherBundles(language) : [])]);
kiosk.loadShop = async () => (await import('./load-shop.ts')).loadShop(kiosk.store);
kiosk.loadRest = async () => (await import('./rest.ts')).loadRest(kiosk.store);
document.body.append(kiosk);
void kiosk.ready
  .then(quiet)
  .then(() => import('./times.ts'))
  .then(({ keepTimes }) => keepTimes(kiosk));
