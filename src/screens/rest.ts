import { readShop } from '../card/read-shop.ts';
import type { Shop } from '../card/shop.ts';
import { marksOn } from '../storage/shop-marks.ts';
import type { Store } from '../storage/store.ts';
import { lineClient } from '../worker/line-client.ts';
import type { Rest } from './customer/kiosk.ts';
import { dayOf } from './fitter/day.ts';

/**
 * The shop and its stock: what this tablet was given last, else the files served beside the kiosk (the demo's, until a
 * shop puts its own there). `root` is where they are served from.
 */
export async function loadRest(store: Store, root = './'): Promise<Rest> {
  const line = lineClient();
  const day = dayOf(new Date());
  const [shop, marks] = await Promise.all([
    store.get<Shop>('shop', 'shop').then((own) => own ?? servedShop(root)),
    marksOn(store, day).catch(() => []),
  ]);
  await line.openStock(new URL(`${root}shop/stock.csv`, document.baseURI).href);
  await line.useMarks(marks, day);
  return { line, shop };
}

async function servedShop(root: string): Promise<Shop> {
  const text = await (await fetch(`${root}shop/shop.json`)).text();
  const { value, findings } = readShop(text, 'shop.json');
  if (!value) throw new Error(`The shop's file could not be read: ${findings.map(({ code }) => code).join(', ')}`);
  return value;
}
