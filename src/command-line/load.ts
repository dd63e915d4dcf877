import { readKnowledge } from '../flow/check/read-knowledge.ts';
import type { Knowledge } from '../flow/knowledge.ts';
import { tablesOf } from '../flow/options.ts';
import { readStock } from '../stock/read-csv.ts';
import type { Stock } from '../stock/shoe.ts';
import type { Finding } from '../units/result.ts';
import { readAnswersFile } from '../visit/answers-file.ts';
import { readStory } from '../visit/story.ts';
import type { Visit } from '../visit/visit.ts';
import { contentFiles, readText } from './files.ts';
import { FLOW_FOLDER } from './places.ts';
import { Refusal } from './refusal.ts';

/** The flow folder, or a refusal with everything wrong in it. */
export function loadKnowledge(folder = FLOW_FOLDER): Knowledge {
  const { value, findings } = readKnowledge(contentFiles(folder));
  if (!value) throw new Refusal(findings);
  return value;
}

/** One visit from an answers file or a story, or a refusal; a note does not refuse. */
export function loadVisit(path: string, knowledge: Knowledge): { visit: Visit; findings: readonly Finding[] } {
  const text = readText(path);
  const tables = tablesOf(knowledge);
  if (isStory(text)) {
    const { value, findings } = readStory(text, path, knowledge.flow, tables);
    if (!value) throw new Refusal(findings);
    return { visit: value.visit, findings };
  }
  const { value, findings } = readAnswersFile(text, path, knowledge.flow, tables);
  if (!value) throw new Refusal(findings);
  return { visit: value, findings };
}

/** A story is an answers file that says what is expected of it; broken JSON is neither, and read as answers. */
function isStory(text: string): boolean {
  try {
    return Object.hasOwn(JSON.parse(text) as object, 'expect');
  } catch {
    return false;
  }
}

/** The shop's stock. Bad lines come back as findings; a list of which nothing loads is refused. */
export function loadStock(path: string, asOf: string): { stock: Stock; findings: readonly Finding[] } {
  const { value, findings } = readStock(readText(path), { asOf });
  const named = findings.map((finding) => ({ file: path, ...finding }));
  if (!value || value.boxes.length === 0) {
    throw new Refusal([...named, { code: 'stock-unreadable', severity: 'error', value: path }]);
  }
  return { stock: value, findings: named };
}
