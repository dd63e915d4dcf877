import type { Reading } from '../../units/result.ts';
import type { Knowledge } from '../knowledge.ts';
import { type Content, readContent } from './content.ts';
import type { ContentFile } from './document.ts';

/** Reads a flow folder's files into what the line needs. No value if anything in them could not be read. */
export function readKnowledge(files: readonly ContentFile[]): Reading<Knowledge> {
  const { content, findings } = readContent(files);
  const knowledge = findings.some(({ severity }) => severity === 'error') ? undefined : knowledgeIn(content);
  return knowledge ? { value: knowledge, findings } : { findings };
}

function knowledgeIn({ flow, rows }: Content): Knowledge | undefined {
  return (
    flow && {
      flow,
      activities: rows['activities.json'].map(({ row }) => row),
      floors: rows['floors.json'].map(({ row }) => row),
      shoeKinds: rows['shoe-kinds.json'].map(({ row }) => row),
      rules: rows['rules.json'].map(({ row }) => row),
      cautions: rows['cautions.json'].map(({ row }) => row),
      advice: rows['advice.json'].map(({ row }) => row),
      sources: rows['sources.json'].map(({ row }) => row),
    }
  );
}
