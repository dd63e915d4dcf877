import { z } from 'zod';
import { templateShape } from './check-template.ts';

/** JSON Schema of a print template, for editors; draft 7, the one they read best. */
export const templateSchema = (): object => z.toJSONSchema(templateShape, { target: 'draft-7', io: 'input' });
