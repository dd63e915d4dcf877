import { readShop } from '../card/read-shop.ts';
import type { Shop } from '../card/shop.ts';
import type { Stock } from '../stock/shoe.ts';
import type { Store } from '../storage/store.ts';
import { lineClient } from '../worker/line-client.ts';
import type { Rest } from './customer/kiosk.ts';

/**
 * The shop and its stock: what this tablet was given last, else the files served beside the kiosk (the demo's, until a
 * shop puts its own there).
 */
export async function loadRest(store: Store): Promise<Rest> {
  const line = lineClient();
  const [kept, shop] = await Promise.all([
    store.get<Stock>('stock', 'stock'),
    store.get<Shop>('shop', 'shop').then((own) => own ?? servedShop()),
  ]);
  await line.useStock(kept ?? (await servedStock()));
  return { line, shop };
}

async function servedShop(): Promise<Shop> {
  const text = await (await fetch('./shop/shop.json')).text();
  const { value, findings } = readShop(text, 'shop.json');
  if (!value) throw new Error(`The shop's file could not be read: ${findings.map(({ code }) => code).join(', ')}`);
  return value;
}

async function servedStock(): Promise<Stock> {
  const response = await fetch('./shop/stock.csv');
  const made = response.headers.get('last-modified');
  const asOf = (made ? new Date(made) : new Date()).toISOString();
  const { stock } = await lineClient().readStock(await response.text(), asOf);
  if (!stock) throw new Error('The stock list could not be read');
  return stock;
}
