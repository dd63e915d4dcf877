import type { FormulaLabels } from './advice.ts';
import { eu } from './systems/eu.ts';
import { mondopoint } from './systems/mondopoint.ts';
import type { SizeSystem } from './systems/size-system.ts';
import { uk } from './systems/uk.ts';
import { ukChild } from './systems/uk-child.ts';
import { usChild } from './systems/us-child.ts';
import { usMen } from './systems/us-men.ts';
import { usWomen } from './systems/us-women.ts';

/** What stands where a system makes no size so short or so long. */
const NO_SIZE = '–';

/**
 * The sizes a foot falls on by the formulas, nearest half, ties up. A guide: the box that is fetched has its own labels.
 *
 * Foot in millimetres. US women's at the default offset. A dash where a system makes no such size.
 *
 * @example formulaLabels(265) // { mondopoint: '265', eu: '42', uk: '8.5', usMen: '9.5', usWomen: '10.5' }
 */
export function formulaLabels(foot: number): FormulaLabels {
  const ukChildSize = labelled(ukChild, foot);
  const usChildSize = labelled(usChild, foot);
  return {
    mondopoint: labelled(mondopoint, foot) ?? NO_SIZE,
    eu: labelled(eu, foot) ?? NO_SIZE,
    uk: labelled(uk, foot) ?? NO_SIZE,
    usMen: labelled(usMen, foot) ?? NO_SIZE,
    usWomen: labelled(usWomen(), foot) ?? NO_SIZE,
    ...(ukChildSize === undefined ? {} : { ukChild: ukChildSize }),
    ...(usChildSize === undefined ? {} : { usChild: usChildSize }),
  };
}

function labelled(system: SizeSystem, foot: number): string | undefined {
  const size = system.size(foot);
  return size === undefined ? undefined : system.print(size);
}
