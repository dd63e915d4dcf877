import { marksOn } from '../storage/shop-marks.ts';
import type { Store } from '../storage/store.ts';
import { lineClient } from '../worker/line-client.ts';
import type { Rest } from './customer/ahead.ts';
import { dayOf } from './fitter/day.ts';
import { loadShop } from './load-shop.ts';

/**
 * The shop's stock and the worker that knows it: what this tablet was given last, else the list served beside the kiosk
 * (the demo's, until a shop puts its own there). `root` is where it is served from.
 */
export async function loadRest(store: Store, root = './'): Promise<Rest> {
  const line = lineClient();
  const day = dayOf(new Date());
  const [shop, marks] = await Promise.all([loadShop(store, root), marksOn(store, day).catch(() => [])]);
  await line.openStock(new URL(`${root}shop/stock.csv`, document.baseURI).href);
  await line.useMarks(marks, day);
  return { line, shop };
}
