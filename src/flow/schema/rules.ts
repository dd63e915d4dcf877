import { z } from 'zod';
import { NUMBER_ATTRIBUTES } from '../../attributes/attributes.ts';
import { BASES, CAUTION_LEVELS, GRADES, KNOWN, OUTCOMES } from '../knowledge.ts';
import { conditionSchema } from './condition.ts';
import { backing, idSchema, rangeSchema, shareOfOne } from './parts.ts';

const ask = z.strictObject({
  attribute: z.enum(NUMBER_ATTRIBUTES),
  ideal: rangeSchema.exactOptional(),
  limits: rangeSchema.exactOptional(),
  shift: z.number().exactOptional(),
  weight: shareOfOne,
  per: z.string().exactOptional(),
  neverLess: z.literal(true).exactOptional(),
});

const must = z.strictObject({ attribute: z.string(), value: z.union([z.string(), z.number(), z.boolean()]) });
const wish = z.strictObject({
  id: idSchema,
  anyOf: z.array(must).min(1),
  weight: shareOfOne,
  per: z.string().exactOptional(),
  safety: z.literal(true).exactOptional(),
});

export const ruleSchema = z.strictObject({
  ...backing,
  id: idSchema,
  basis: z.enum(BASES),
  topic: idSchema,
  when: conditionSchema.exactOptional(),
  asks: z.array(ask).exactOptional(),
  musts: z.array(must).exactOptional(),
  wishes: z.array(wish).exactOptional(),
  cautions: z.array(idSchema).exactOptional(),
  advice: z.array(idSchema).exactOptional(),
  outcome: z.enum(OUTCOMES).exclude(['shortlist']).exactOptional(),
});

const isTrue = z.literal(true).exactOptional();

export const cautionSchema = z.strictObject({
  ...backing,
  id: idSchema,
  level: z.enum(CAUTION_LEVELS),
  health: isTrue,
  always: isTrue,
  fitterOnly: isTrue,
  whom: idSchema.exactOptional(),
});

export const adviceSchema = z.strictObject({
  ...backing,
  id: idSchema,
  kind: z.enum(['sock', 'lacing', 'insole', 'size', 'habit']),
  health: isTrue,
  fitterOnly: isTrue,
  untilChosen: isTrue,
});

export const sourceSchema = z.strictObject({
  id: idSchema,
  authors: z.string().min(1),
  year: z.int().min(1900).max(2100).exactOptional(),
  title: z.string().min(1),
  where: z.string().min(1),
  doi: z.string().exactOptional(),
  kind: z.enum(['trial', 'cohort', 'review', 'guideline', 'laboratory', 'survey', 'standard', 'reference', 'leaflet']),
  found: z.string().min(1),
  grade: z.enum(GRADES),
  known: z.enum(KNOWN),
});
