import type { LabelSystem } from '../../stock/shoe.ts';
import type { Reading } from '../../units/result.ts';
import { centimetres } from './centimetres.ts';
import { eu } from './eu.ts';
import { mondopoint } from './mondopoint.ts';
import type { SizeSystem } from './size-system.ts';
import { uk } from './uk.ts';
import { ukChild } from './uk-child.ts';
import { usChild } from './us-child.ts';
import { usMen } from './us-men.ts';
import { usWomen } from './us-women.ts';

/** The system behind each label that a box may carry. US women's at the default offset; a model's own goes to `usWomen`. */
export const SYSTEMS: Readonly<Record<LabelSystem, SizeSystem>> = {
  eu,
  uk,
  'us-men': usMen,
  'us-women': usWomen(),
  'uk-child': ukChild,
  'us-child': usChild,
  mondopoint,
  cm: centimetres,
};

/**
 * Reads one label of a box. A label that its system does not print comes back as `label-not-in-system`.
 *
 * @example readLabel('eu', '42 2/3') // value 42.666…
 */
export function readLabel(system: LabelSystem, text: string): Reading<number> {
  const value = SYSTEMS[system].parse(text);
  if (value !== undefined) return { value, findings: [] };
  return { findings: [{ code: 'label-not-in-system', severity: 'error', value: text, data: { system } }] };
}
