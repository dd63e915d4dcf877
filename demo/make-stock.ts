/** Writes `demo/stock.csv` and `demo/template.csv`, all of it invented: `npx tsx demo/make-stock.ts`. The same seed gives the same files. */
import { writeFileSync } from 'node:fs';
import { stockTemplate } from '../src/stock/template.ts';
import { writeStock } from '../src/stock/write-csv.ts';
import { demoStock } from './demo-stock.ts';
import { AS_OF, SEED } from './seed.ts';

writeFileSync(new URL('stock.csv', import.meta.url), writeStock(demoStock(SEED, AS_OF)));
writeFileSync(new URL('template.csv', import.meta.url), stockTemplate());
