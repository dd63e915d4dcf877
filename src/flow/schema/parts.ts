import { z } from 'zod';
import { GRADES, KNOWN } from '../knowledge.ts';

/** What every id in the content looks like. */
export const idSchema = z.string().regex(/^[a-z][a-z0-9-]*$/);
/** An option may also begin with a number: `65-plus`. */
export const optionIdSchema = z.string().regex(/^[a-z0-9][a-z0-9-]*$/);

export const shareOfOne = z.number().min(0).max(1);
export const rangeSchema = z.tuple([z.number(), z.number()]).readonly();

/** Who says so: part of every row that claims something. */
export const backing = {
  source: z.string().min(1).describe('An id in sources.json, or common-practice'),
  grade: z.enum(GRADES),
  known: z.enum(KNOWN),
};
