import { z } from 'zod';
import type { Condition } from '../condition.ts';

const of = z.string().describe('A question (in flow.json) or a fact (in rules.json)');

/** The closed set of conditions. Strict, so that a misspelt word is refused rather than read as another condition. */
export const conditionSchema: z.ZodType<Condition> = z
  .union([
    z.strictObject({ of, is: z.union([z.string(), z.number(), z.boolean()]) }),
    z.strictObject({ of, anyOf: z.array(z.union([z.string(), z.number()])).min(1) }),
    z.strictObject({ of, includes: z.string() }),
    z.strictObject({ of, includesAny: z.array(z.string()).min(1) }),
    z.strictObject({ of, anyBut: z.string() }),
    z.strictObject({ of, atLeast: z.number() }),
    z.strictObject({ of, upTo: z.number() }),
    z.strictObject({ answered: z.string() }),
    z.strictObject({ all: z.array(z.lazy(() => conditionSchema)).min(1) }),
    z.strictObject({ any: z.array(z.lazy(() => conditionSchema)).min(1) }),
    z.strictObject({ not: z.lazy(() => conditionSchema) }),
  ])
  .meta({ id: 'condition' });
