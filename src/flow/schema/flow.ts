import { z } from 'zod';
import { READERS, TABLE_NAMES } from '../format.ts';
import { conditionSchema } from './condition.ts';
import { idSchema, optionIdSchema } from './parts.ts';

const askWhen = conditionSchema.exactOptional();
const readBy = z.enum(READERS).exactOptional();
const isTrue = z.literal(true).exactOptional();

const sum = z.number().positive().exactOptional();
const option = z.strictObject({ id: optionIdSchema, alone: isTrue, ends: isTrue, sum, showWhen: askWhen, readBy });
const spelled = z.array(option).min(1);
const rowsWhen = z
  .array(z.strictObject({ rows: z.array(idSchema).min(1), when: conditionSchema }))
  .min(1)
  .exactOptional();
const options = z.union([spelled, z.strictObject({ table: z.enum(TABLE_NAMES), rowsWhen })]);
const extra = z.array(option).exactOptional();
const question = { id: idSchema, health: isTrue, askWhen, noteWhen: askWhen, readBy };

const questionSchema = z.discriminatedUnion('kind', [
  z.strictObject({ ...question, kind: z.literal('one-of'), options, extra }),
  z.strictObject({ ...question, kind: z.literal('yes-no') }),
  z.strictObject({
    ...question,
    kind: z.literal('some-of'),
    options,
    extra,
    most: z.int().min(1).exactOptional(),
  }),
  z.strictObject({
    ...question,
    kind: z.literal('number'),
    units: z.array(z.strictObject({ id: idSchema, from: z.number(), to: z.number() })).min(1),
    notSure: isTrue,
  }),
  z.strictObject({ ...question, kind: z.literal('shares'), options, extra }),
  z.strictObject({
    ...question,
    kind: z.literal('against-today'),
    properties: z.array(z.strictObject({ id: idSchema, choices: z.array(optionIdSchema).min(2) })).min(1),
  }),
  z.strictObject({
    ...question,
    kind: z.literal('body-map'),
    regions: z.array(z.strictObject({ id: idSchema, view: z.enum(['front', 'back', 'foot']) })).min(1),
  }),
  z.strictObject({ ...question, kind: z.literal('signs'), options: spelled }),
]);

const screens = z.int().min(1);

/** The shape of a flow.json. `$schema` is for editors and is not part of the flow. */
export const flowSchema = z.strictObject({
  id: idSchema,
  version: z.int().min(1),
  languages: z.array(z.string().min(2)).min(1),
  bounds: z.strictObject({
    longest: screens,
    shortWays: z.array(z.strictObject({ id: idSchema, when: conditionSchema, screens })),
    typical: z.strictObject({ story: z.string(), screens }),
  }),
  sections: z.array(z.strictObject({ id: idSchema, questions: z.array(questionSchema).min(1) })).min(1),
});
