import type { Flow } from '../flow/format.ts';
import type { Tables } from '../flow/options.ts';
import type { Reading } from '../units/result.ts';
import { readFile, writeAnswersFile } from './answers-file.ts';
import { visitReader } from './read-visit.ts';
import { isGroup, type Reader, text } from './reader.ts';
import type { Visit } from './visit.ts';

/** A named example visitor: answers, and what is expected to come of them. */
export interface Story {
  readonly name: string;
  /** One sentence about the visitor. */
  readonly about: string;
  /** What tests hold the line to; they know what may stand in it. */
  readonly expect: Readonly<Record<string, unknown>>;
  readonly visit: Visit;
}

/** Reads a story: an answers file with `name`, `about` and `expect` besides. */
export const readStory = (source: string, file: string, flow: Flow, tables: Tables): Reading<Story> =>
  readFile(source, file, storyReader(flow, tables));

/** Writes a story as a file. */
export function writeStory({ name, about, expect, visit }: Story): string {
  const answers = JSON.parse(writeAnswersFile(visit)) as Record<string, unknown>;
  return `${JSON.stringify({ name, about, ...answers, expect }, null, 2)}\n`;
}

const storyReader =
  (flow: Flow, tables: Tables): Reader<Story> =>
  (value, path, report) => {
    if (!isGroup(value)) {
      report(path, { code: 'field-not-a-group', value });
      return undefined;
    }
    const { name, about, expect, ...answers } = value;
    const visit = visitReader(flow, tables)(answers, path, report);
    const said = { name: needed('name', name), about: needed('about', about) };
    if (!isGroup(expect)) report([...path, 'expect'], { code: 'field-not-a-group', value: expect });
    if (visit === undefined || said.name === undefined || said.about === undefined || !isGroup(expect))
      return undefined;
    return { name: said.name, about: said.about, expect, visit };

    function needed(field: string, from: unknown): string | undefined {
      if (from !== undefined) return text(from, [...path, field], report);
      report(path, { code: 'field-missing', value: field });
      return undefined;
    }
  };
