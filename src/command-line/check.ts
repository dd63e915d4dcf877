import { checkFlow } from '../flow/check/check-flow.ts';
import type { Finding } from '../units/result.ts';
import { checkTemplates, holdsTemplates } from './check-templates.ts';
import { contentFiles } from './files.ts';
import { FLAG, type Given, readOptions } from './options.ts';
import { FLOW_FOLDER, PRINT_TEMPLATES } from './places.ts';
import { json, type Said } from './said.ts';

/**
 * `fit check [folder] [--paths] [--json]`: everything wrong with a flow folder, and its exact counts; or with a folder
 * of print templates. Without a folder: the flow and the print templates of this project.
 */
export function check(args: readonly string[]): Said {
  const given = readOptions(args, { paths: FLAG, json: FLAG });
  const [folder] = given.files;
  if (folder !== undefined && holdsTemplates(folder)) return templatesAlone(folder, given);
  const { routes, answerPaths, shortest, longest, ...checked } = checkFlow(contentFiles(folder ?? FLOW_FOLDER));
  // Templates are tried out with the flow's own cautions, so a flow that is not sound comes first.
  const sound = !checked.findings.some(isError);
  const findings = [...checked.findings, ...(folder === undefined && sound ? checkTemplates(PRINT_TEMPLATES) : [])];
  if (given.flag('json')) {
    return { text: json({ findings: findings.map(told), routes, answerPaths, shortest, longest }), findings };
  }
  const counts = given.flag('paths')
    ? `routes ${routes}\nanswer paths ${answerPaths}\nshortest ${shortest} questions\nlongest ${longest} questions\n`
    : '';
  return { text: `${counts}${summary('The flow is sound.', findings)}`, findings };
}

function templatesAlone(folder: string, given: Given): Said {
  const findings = checkTemplates(folder);
  if (given.flag('json')) return { text: json({ findings: findings.map(told) }), findings };
  return { text: summary('The print templates are sound.', findings), findings };
}

const told = ({ code, severity, file, line, at, value }: Finding) => ({ code, severity, file, line, at, value });

const isError = ({ severity }: Finding): boolean => severity === 'error';

function summary(sound: string, findings: readonly Finding[]): string {
  const errors = findings.filter(isError).length;
  return `${errors === 0 ? sound : `${errors} found.`}\n`;
}
