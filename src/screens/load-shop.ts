import { readShop } from '../card/read-shop.ts';
import type { Shop } from '../card/shop.ts';
import type { Store } from '../storage/store.ts';

/** The shop as this tablet was told, else the file served beside the kiosk. `root` is where that is served from. */
export async function loadShop(store: Store, root = './'): Promise<Shop> {
  const own = await store.get<Shop>('shop', 'shop');
  if (own) return own;
  const [text, logo] = await Promise.all([textAt(`${root}shop/shop.json`), textAt(`${root}shop/logo.svg`)]);
  const { value, findings } = readShop(text ?? '', 'shop.json', logo);
  if (!value) throw new Error(`The shop's file could not be read: ${findings.map(({ code }) => code).join(', ')}`);
  return value;
}

async function textAt(address: string): Promise<string | undefined> {
  const response = await fetch(address);
  return response.ok ? response.text() : undefined;
}
