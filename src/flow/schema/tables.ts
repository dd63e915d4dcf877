import { z } from 'zod';
import { NUMBER_ATTRIBUTES } from '../../attributes/attributes.ts';
import { LOADS } from '../knowledge.ts';
import { backing, idSchema, rangeSchema, shareOfOne } from './parts.ts';

const loadValue = z.strictObject({
  ...backing,
  value: shareOfOne,
  measured: z.strictObject({ value: z.number(), unit: z.literal('body-weights') }).exactOptional(),
});
const backedRange = z.strictObject({ ...backing, range: rangeSchema });

export const activitySchema = z.strictObject({
  id: idSchema,
  group: idSchema,
  loads: z.record(z.enum(LOADS), loadValue),
  met: z
    .strictObject({ ...backing, value: z.number().positive(), code: z.string(), proxy: z.string().exactOptional() })
    .exactOptional(),
  toeRoom: backedRange,
  unit: z.enum(['runs', 'shifts', 'sessions', 'walks', 'hours', 'matches']),
  otherFootwear: idSchema.exactOptional(),
  tasks: z.array(idSchema),
  floors: z.array(idSchema),
  uses: z.array(idSchema).exactOptional(),
});

export const floorSchema = z.strictObject({
  id: idSchema,
  group: z.enum(['indoor', 'outdoor']),
  hardness: backedRange,
  grip: backedRange,
  lugs: backedRange,
  roughness: z.strictObject({ ...backing, value: shareOfOne }),
  marks: z.literal(true).exactOptional(),
});

export const shoeKindSchema = z.strictObject({
  ...backing,
  id: idSchema,
  group: idSchema,
  usual: z.partialRecord(z.enum(NUMBER_ATTRIBUTES), rangeSchema),
});
