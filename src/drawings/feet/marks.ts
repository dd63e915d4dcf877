import type { FootMeasure } from '../../observation/observation.ts';

/** Which outline a measure is drawn on, and the lines of gauge or tape over it. */
interface Mark {
  readonly view: 'above' | 'side';
  readonly mark: string;
}
const line = (d: string): string => `<path class="gauge" d="${d}"/>`;

/** A gauge is a line between two stops; a tape is a band that goes round. */
export const MARKS: Readonly<Record<FootMeasure, Mark>> = {
  length: { view: 'above', mark: line('M58 6H108M50 166H108M100 10V162M95 17L100 9L105 17M95 155L100 163L105 155') },
  ballLength: {
    view: 'above',
    mark: line('M84 62H108M50 166H108M100 66V162M95 73L100 65L105 73M95 155L100 163L105 155'),
  },
  width: { view: 'above', mark: line('M13 66L13 92M91 52L91 78M17 79H87M24 74L16 79L24 84M80 74L88 79L80 84') },
  heelWidth: {
    view: 'above',
    mark: line('M25 124V150M77 124V150M29 137H73M36 132L28 137L36 142M66 132L74 137L66 142'),
  },
  ballGirth: {
    view: 'side',
    mark: line('M124 60C118 72 116 88 118 102M134 64C128 76 126 90 128 102M124 60L134 64M118 102H128'),
  },
  instep: { view: 'side', mark: line('M98 42C88 56 84 76 86 98M108 50C98 64 94 80 96 98M98 42L108 50M86 98H96') },
};
