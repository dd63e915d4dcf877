import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { jsonSchemas, schemaText } from '../../src/flow/schema/content-schemas.ts';
import { flowSchema } from '../../src/flow/schema/flow.ts';
import { FITTING } from './fitting.ts';

const folder = new URL('../../flows/schemas/', import.meta.url);

test('the schema files that editors read are those the check uses', () => {
  const written = Object.entries(jsonSchemas()).map(([file, schema]) => [file, schemaText(schema)]);
  const committed = readdirSync(folder).map((file) => [file, readFileSync(new URL(file, folder), 'utf8')]);
  expect(Object.fromEntries(committed)).toEqual(Object.fromEntries(written));
});

test('a misspelt word in a question is refused, not passed over', () => {
  expect(flowSchema.safeParse(FITTING).success).toBe(true);
  const misspelt = structuredClone(FITTING) as unknown as { sections: { questions: object[] }[] };
  Object.assign(misspelt.sections[0]?.questions[0] ?? {}, { askwhen: { answered: 'reason' } });
  expect(flowSchema.safeParse(misspelt).success).toBe(false);
});
