import { unlocked } from './bench-states.ts';
import type { Kept, ScreenState, Step } from './screen-state.ts';

const KEPT: Kept = { pin: 'set' };
const TAB = '[data-tab="shop"]';
const shop = (id: string, place: string, steps: readonly Step[], shows: string, kept = KEPT): ScreenState => ({
  ...unlocked(id, [TAB, ...(place === 'stock' ? [] : [`[data-place="${place}"]`]), ...steps], shows, kept),
  id: `shop-${id}`,
});

/** Invented shoes, two of the lines wrong. */
const LIST = `shoe,model,shelf,drop (mm),box,us men,place,on hand
a,Toy Adder,men,6,a1,9.5,A1,1
b,Toy Bittern,men,7,b1,9.5,A2,two
c,Toy Curlew,men,99,c1,9.5,A3,1
`;
const offered: Step = { into: 'lw-stock-load input[type="file"]', file: 'autumn.csv', holds: LIST };
const sold: readonly Step[] = [
  { into: 'lw-stock-boxes input[name="place"]', typed: 'A' },
  '.box-rows li:first-child [data-mark="sold"]',
  '.marked summary',
];

/** The shop's: stock, what the range lacks, how shoes are measured, settings. */
export const shopStates: readonly ScreenState[] = [
  shop('stock', 'stock', [], 'lw-stock-boxes [role="status"]'),
  shop('load', 'stock', [offered], '.findings li'),
  shop('boxes', 'stock', sold, '.marked[open] li'),
  shop('lacks-none', 'lacks', [], 'lw-shop-lacks h1'),
  shop('lacks', 'lacks', [], 'lw-shop-lacks table', { ...KEPT, lacks: true }),
  shop('measuring', 'measuring', [], '.measuring h1'),
  shop('settings', 'settings', [], '.formats label'),
  shop(
    'settings-wrong',
    'settings',
    // Once the card formats stand: without one the form would ask for that too.
    ['.formats input:checked', { into: 'input[name="warning"]', typed: '5' }, '[data-act="save"]'],
    '#wrong-warning',
  ),
  shop('card-format', 'settings', ['.formats label:last-of-type', '[data-act="preview"]'], 'iframe.preview'),
  shop('pin-change', 'settings', ['lw-pin-change button'], '#pin-said.error'),
  shop('wipe', 'settings', ['[data-act="wipe"]'], '[data-act="wipe-yes"]'),
];
