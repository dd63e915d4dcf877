import { z } from 'zod';
import { flowSchema } from './flow.ts';
import { adviceSchema, cautionSchema, ruleSchema, sourceSchema } from './rules.ts';
import { activitySchema, floorSchema, shoeKindSchema } from './tables.ts';

/** The tables of a flow folder, by file: each is a list of rows of one shape. */
export const TABLE_SCHEMAS = {
  'activities.json': activitySchema,
  'floors.json': floorSchema,
  'shoe-kinds.json': shoeKindSchema,
  'rules.json': ruleSchema,
  'cautions.json': cautionSchema,
  'advice.json': adviceSchema,
  'sources.json': sourceSchema,
} as const;

/** JSON Schema for editors, by file of `flows/schemas`; draft 7, the one they read best. */
export function jsonSchemas(): Readonly<Record<string, object>> {
  const draft = { target: 'draft-7', io: 'input' } as const;
  const tables = Object.entries(TABLE_SCHEMAS).map(
    ([file, schema]) => [file.replace('.json', '.schema.json'), z.toJSONSchema(z.array(schema), draft)] as const,
  );
  return { 'flow.schema.json': withSchemaKey(z.toJSONSchema(flowSchema, draft)), ...Object.fromEntries(tables) };
}

/** Editors find the schema by a `$schema` key in the file, which the flow itself has no use for. */
function withSchemaKey(schema: { properties?: object }): object {
  return { ...schema, properties: { $schema: { type: 'string' }, ...schema.properties } };
}

/** A schema file as it is written. */
export const schemaText = (schema: object): string => `${JSON.stringify(schema, null, 2)}\n`;
