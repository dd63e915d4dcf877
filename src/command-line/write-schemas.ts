import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { templateSchema } from '../card/template-schema.ts';
import { jsonSchemas, schemaText } from '../flow/schema/content-schemas.ts';

/** Writes the JSON Schema files that editors use to help whoever edits a flow or a print template. */
const folder = fileURLToPath(new URL('../../flows/schemas/', import.meta.url));
mkdirSync(folder, { recursive: true });
for (const [file, schema] of Object.entries(jsonSchemas())) writeFileSync(folder + file, schemaText(schema));

const templates = fileURLToPath(new URL('../../print-templates/', import.meta.url));
writeFileSync(`${templates}template.schema.json`, schemaText(templateSchema()));
