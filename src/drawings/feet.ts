import above from './feet/above.svg?raw';
import { MARKS } from './feet/marks.ts';
import side from './feet/side.svg?raw';

const OUTLINES = { above, side } as const;

/** The picture turned over, left for right: both feet are drawn once. */
function turned(picture: string, width: number): string {
  return picture.replace(/>/, `><g transform="matrix(-1 0 0 1 ${width} 0)">`).replace('</svg>', '</g></svg>');
}

function marked(picture: string, mark: string): string {
  return picture.replace('</svg>', `${mark}</svg>`);
}

/**
 * Where tape or gauge goes, by measure and foot: `length-left`, `ballGirth-right`. The outlines are of a left foot from
 * above, toes up, and of a right foot from its outer side, toes to the right.
 */
export const drawings: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(MARKS).flatMap(([measure, { view, mark }]) => {
    const own = marked(OUTLINES[view], mark);
    return view === 'above'
      ? [
          [`${measure}-left`, own],
          [`${measure}-right`, turned(own, 112)],
        ]
      : [
          [`${measure}-left`, turned(own, 172)],
          [`${measure}-right`, own],
        ];
  }),
);
