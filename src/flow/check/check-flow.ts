import type { Finding } from '../../units/result.ts';
import { walk } from '../walk.ts';
import { checkBacking } from './check-backing.ts';
import { checkIds } from './check-ids.ts';
import { checkReferences } from './check-references.ts';
import { checkRoutes } from './check-routes.ts';
import { checkRules } from './check-rules.ts';
import { checkUnread } from './check-unread.ts';
import { checkWords } from './check-words.ts';
import { readContent, tablesIn } from './content.ts';
import type { ContentFile } from './document.ts';

/** What a check of a flow folder comes to: everything found, and exact counts where the flow could be walked. */
export interface FlowCheck {
  readonly findings: readonly Finding[];
  /** Distinct ordered sets of questions shown. */
  readonly routes: number;
  /** Distinct ways to answer it all, as text: it may exceed what JSON numbers hold. */
  readonly answerPaths: string;
  /** Questions on the shortest and on the longest route. */
  readonly shortest: number;
  readonly longest: number;
}

/**
 * Checks a flow folder: `flow.json`, its tables, rules, words and stories, with `sources.json` and the shared words.
 *
 * Findings come in the order of the files given, then by line. A flow whose conditions cannot be read is not walked.
 */
export function checkFlow(files: readonly ContentFile[]): FlowCheck {
  const { content, findings } = readContent(files);
  const tables = tablesIn(content);
  const beforeWalking = [...checkIds(content), ...checkReferences(content, tables)];
  const walked = content.flow && beforeWalking.length === 0 ? walk(content.flow, tables) : undefined;
  const found = [
    ...findings,
    ...beforeWalking,
    ...(walked ? checkRoutes(content, tables, walked) : []),
    ...checkRules(content, tables),
    ...checkBacking(content),
    ...checkUnread(content),
    ...checkWords(content),
  ];
  return {
    findings: inFileOrder(found, files),
    routes: Number(walked?.routes ?? 0),
    answerPaths: String(walked?.answerPaths ?? 0),
    shortest: walked?.shortest ?? 0,
    longest: walked?.longest ?? 0,
  };
}

function inFileOrder(findings: readonly Finding[], files: readonly ContentFile[]): readonly Finding[] {
  const order = new Map(files.map(({ path }, i) => [path, i]));
  const place = ({ file }: Finding) => order.get(file ?? '') ?? files.length;
  return [...findings].sort((a, b) => place(a) - place(b) || (a.line ?? 0) - (b.line ?? 0));
}
