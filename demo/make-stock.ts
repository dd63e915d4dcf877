/** Writes `demo/stock.csv`, all of it invented: `npx tsx demo/make-stock.ts`. The same seed gives the same file. */
import { writeFileSync } from 'node:fs';
import { writeStock } from '../src/stock/write-csv.ts';
import { demoStock } from './demo-stock.ts';
import { AS_OF, SEED } from './seed.ts';

writeFileSync(new URL('stock.csv', import.meta.url), writeStock(demoStock(SEED, AS_OF)));
