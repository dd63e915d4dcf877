import type { AttributeKey } from '../attributes/attributes.ts';

/* Single-line drawings, 160 by 90, all of one shoe seen from the side unless said. Colour comes from the page. */
const SIDE =
  '<path d="M18 62V40c0-8 4-14 10-14 3 9 12 10 20 8 14 10 34 14 70 18 12 1 20 4 22 10"/><path d="M16 62h126c0 6-4 10-10 11l-30 1H20c-4 0-5-6-4-12z"/>';
const THUMB = (x: number) => `<path d="M${x - 6} 8v34c0 8 12 8 12 0V8"/><path d="M${x} 50v8m-3-4 3 4 3-4"/>`;
const ARROW_UP = (x: number, y: number) => `<path d="M${x} ${y}v-16m-4 5 4-5 4 5"/>`;
const SPAN = (x: number, top: number, bottom: number) =>
  `<path d="M${x - 5} ${top}h10m-5 0v${bottom - top}m-5 0h10" stroke-width="2.5"/>`;
const SOLE_FROM_BELOW =
  '<path d="M14 45c0-14 12-18 26-17 16 1 26 4 44-1 22-7 58-6 62 17 3 20-28 26-58 20-18-4-30-2-48 0-16 1-26-5-26-19z"/>';

const drawing = (lines: string): string =>
  `<svg class="measuring-drawing" viewBox="0 0 160 90" aria-hidden="true" focusable="false"><g fill="none" stroke="currentColor" stroke-width="1.5" stroke-linecap="round" stroke-linejoin="round">${lines}</g></svg>`;

/** Where to put the gauge, the rule or the thumb. 12 % and 75 % of the inner length are the points of the World Athletics shoe rules. */
export const MEASURING_DRAWINGS: Readonly<Partial<Record<AttributeKey, string>>> = {
  mass: drawing(
    '<path d="M18 30V16c0-6 3-10 8-10 3 6 9 7 15 6 12 8 30 10 60 13 10 1 17 3 18 8v6H16c-2 0-2-5 2-9z"/><path d="M10 46h130M30 46v10h90V46"/><path d="M22 84h106l-8-28H30z"/><circle cx="75" cy="70" r="8"/><path d="m75 70 4-5"/>',
  ),
  // Inner length runs from x 20 to x 138: 12 % is x 34, 75 % is x 108.
  'heel-stack': drawing(`${SIDE}${SPAN(34, 62, 74)}<path d="M34 62V12m0 62v10"/>`),
  'forefoot-stack': drawing(`${SIDE}${SPAN(108, 62, 74)}<path d="M108 62V40m0 34v10"/>`),
  drop: drawing(`${SIDE}${SPAN(34, 56, 74)}${SPAN(108, 64, 74)}<path d="M34 56 108 64" stroke-dasharray="3 3"/>`),
  cushion: drawing(`${SIDE}${THUMB(34)}`),
  rebound: drawing(`${SIDE}${THUMB(34)}<path d="M46 34c6 2 6 10 0 14"/>`),
  bend: drawing(
    '<path d="M14 70h78c16 0 26-8 34-30"/><path d="M14 70V46c0-8 4-12 9-12 3 8 10 9 17 8 16 8 36 8 52 2 10-4 18-10 26-16"/><path d="M112 70a44 44 0 0 0 22-32m-6 3 6-3 2 7"/>',
  ),
  'forefoot-stiffness': drawing(`${SIDE}${THUMB(112)}<path d="M124 76h30v8h-30z"/>`),
  rocker: drawing(
    `<path d="M16 74c24 4 70 4 92 0 14-3 26-10 34-20"/><path d="M18 74V44c0-8 4-14 10-14 3 9 12 10 20 8 16 9 50 10 94 16"/><path d="M8 79h146"/>${SPAN(140, 56, 79)}`,
  ),
  twist: drawing(
    `${SOLE_FROM_BELOW}<path d="M26 18c10-8 22-4 24 6m-6-3 6 3 3-6"/><path d="M134 76c-10 8-22 4-24-6m6 3-6-3-3 6"/>`,
  ),
  'heel-counter': drawing(`${SIDE}<path d="M2 48h12m-5-4 5 4-5 4"/><path d="M44 44H30m5-4-5 4 5 4"/>`),
  'medial-support': drawing(`${SIDE}<path d="M44 62h34v11H44zM50 62l-6 6m16-6-10 11m20-11L60 73m18-8-8 8"/>`),
  'platform-width': drawing(`${SOLE_FROM_BELOW}<path d="M112 16v60m-5-60h10m-10 60h10" stroke-width="2.5"/>`),
  'midfoot-hold': drawing(`${SIDE}${ARROW_UP(66, 40)}`),
  'toe-box-shape': drawing(
    '<path d="M8 80V40C8 18 20 10 26 6c6 4 18 12 18 34v40M60 80V38c0-20 8-30 20-30s20 10 20 30v42M116 80V30c0-14 6-20 18-20s18 6 18 20v50"/>',
  ),
  'toe-box-depth': drawing(`${SIDE}<path d="M100 58h30"/>${SPAN(122, 54, 62)}`),
  'instep-volume': drawing(`${SIDE}<path d="M46 56c10-10 24-12 38-4"/>${ARROW_UP(64, 48)}`),
  'collar-height': drawing(
    `${SIDE}<path d="M20 4v20m26-20v26"/><circle cx="34" cy="18" r="4"/><path d="M8 26h52" stroke-dasharray="3 3"/>`,
  ),
  'lug-depth': drawing(
    '<path d="M10 20h140v20h-20v24h-18V40H92v24H74V40H54v24H36V40H10z"/><path d="M82 84V40"/><path d="M60 64h44" stroke-dasharray="3 3"/>',
  ),
};
