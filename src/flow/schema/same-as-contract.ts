import type { z } from 'zod';
import type { Flow } from '../format.ts';
import type { Activity, AdviceRow, CautionRow, Floor, Rule, ShoeKind, Source } from '../knowledge.ts';
import type { flowSchema } from './flow.ts';
import type { adviceSchema, cautionSchema, ruleSchema, sourceSchema } from './rules.ts';
import type { activitySchema, floorSchema, shoeKindSchema } from './tables.ts';

type DeepReadonly<T> = T extends object ? { readonly [K in keyof T]: DeepReadonly<T[K]> } : T;
type Both<A, B> = [DeepReadonly<A>] extends [DeepReadonly<B>]
  ? [DeepReadonly<B>] extends [DeepReadonly<A>]
    ? true
    : { readonly 'the schema lacks': B }
  : { readonly 'the schema allows': A };
type Holds<T extends true> = T;

/** Does not compile once a schema and the contract it checks for part ways. Mutable and readonly count as the same. */
export type SchemasMatchContracts = [
  Holds<Both<z.infer<typeof flowSchema>, Flow>>,
  Holds<Both<z.infer<typeof activitySchema>, Activity>>,
  Holds<Both<z.infer<typeof floorSchema>, Floor>>,
  Holds<Both<z.infer<typeof shoeKindSchema>, ShoeKind>>,
  Holds<Both<z.infer<typeof ruleSchema>, Rule>>,
  Holds<Both<z.infer<typeof cautionSchema>, CautionRow>>,
  Holds<Both<z.infer<typeof adviceSchema>, AdviceRow>>,
  Holds<Both<z.infer<typeof sourceSchema>, Source>>,
];
