/**
 * Measures what the design promises and prints it beside its budget, as a table and then as JSON. `npm run measure`.
 * The floor of the two speeds on screen is a bare Lit element, measured in the same run on the same machine.
 */
import { chromium } from '@playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from '../browser/find-browser.ts';
import { cardPdf } from './card-pdf.ts';
import { APART, firstLoad, type Kind } from './first-load.ts';
import { flowCheckTime, lineUpTimes } from './line-up.ts';
import { otherWriters } from './other-writers.ts';
import { openBare, openKiosk } from './sites.ts';
import { coldStart, tapToNext } from './speed.ts';

interface Row {
  readonly what: string;
  readonly measured: number;
  readonly unit: 'kB' | 'ms' | '';
  /** Design budget; absent where a figure is only told. */
  readonly budget?: number;
}
const rows: Row[] = [];
const tell = (what: string, measured: number, unit: Row['unit'], budget?: number): void => {
  const rounded = Math.round(measured * 10) / 10;
  rows.push({
    what,
    measured: rounded,
    unit,
    ...(budget === undefined ? {} : { budget: Math.round(budget * 10) / 10 }),
  });
};
const told = (work: string): void => void process.stderr.write(`${work} …\n`);

told('flow and line-up');
const check = flowCheckTime();
const lineUps = lineUpTimes([100, 1_000, 2_000, 10_000, 100_000]);

told('building');
const [kiosk, bare] = [await openKiosk(), await openBare()];
const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_ARGUMENTS });
try {
  told('first load');
  const load = await firstLoad(browser, kiosk);
  tell('first load, all counted, brotli', load.counted / 1000, 'kB', 60);
  for (const [kind, bytes] of Object.entries(load.bytes)) {
    if (bytes > 0) tell(`  ${kind}${APART.includes(kind as Kind) ? ' (apart)' : ''}`, bytes / 1000, 'kB');
  }
  for (const slowed of [1, 6]) {
    told(`cold start, ${slowed}×`);
    const cold = await coldStart(browser, bare, kiosk, slowed, 5);
    tell(`cold start to first question, ${slowed}×, bare`, cold.bare, 'ms');
    tell(
      `cold start to first question, ${slowed}×, kiosk`,
      cold.kiosk,
      'ms',
      slowed === 6 ? cold.bare + 600 : undefined,
    );
    told(`taps, ${slowed}×`);
    const taps = await tapToNext(browser, bare, kiosk, slowed, slowed === 1 ? 1 : 2);
    tell(`tap to next question, ${slowed}×, p95, bare`, taps.bare, 'ms');
    tell(
      `tap to next question, ${slowed}×, p95, kiosk (${taps.count} questions)`,
      taps.kiosk,
      'ms',
      slowed === 6 ? taps.bare + 15 : undefined,
    );
    tell(`tap to next question, ${slowed}×, middle, kiosk`, taps.middle, 'ms');
    for (const { question, ms } of taps.slowest) tell(`  slow: ${question}`, ms, 'ms');
  }
  told('card');
  const card = await cardPdf(browser, kiosk);
  tell('card PDF in Chromium, first', card.first, 'ms', 500);
  tell('card PDF in Chromium, once loaded', card.again, 'ms', 250);
  tell('card PDF, size', card.bytes / 1000, 'kB', 120);
  told('the same page by others');
  for (const { name, ms, bytes } of await otherWriters(browser)) {
    tell(`  ${name}`, ms, 'ms');
    tell('    its size', bytes / 1000, 'kB');
  }
} finally {
  await browser.close();
  await kiosk.close();
  await bare.close();
}
for (const { shoes, boxes, plain, withWhatIf } of lineUps) {
  tell(`line-up from ${shoes} shoes (${boxes} boxes)`, plain, 'ms', shoes === 2_000 ? 60 : undefined);
  if (withWhatIf !== undefined) tell('  with the what-if', withWhatIf, 'ms');
}
const [small, large] = [lineUps.find(({ shoes }) => shoes === 1_000), lineUps.at(-1)];
if (small && large) {
  // Linear: a hundred times the shoes take a hundred times as long, or less.
  tell(
    `growth of time from ${small.shoes} to ${large.shoes} shoes`,
    large.plain / small.plain,
    '',
    large.shoes / small.shoes,
  );
}
tell('flow check and path counts', check, 'ms', 1000);

const wide = Math.max(...rows.map(({ what }) => what.length));
for (const { what, measured, unit, budget } of rows) {
  const against = budget === undefined ? '' : `  budget ${budget} ${unit}  ${measured <= budget ? 'kept' : 'OVER'}`;
  process.stdout.write(`${what.padEnd(wide)}  ${String(measured).padStart(9)} ${unit.padEnd(2)}${against}\n`);
}
process.stdout.write(`\n${JSON.stringify({ rows })}\n`);
