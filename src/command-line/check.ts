import { checkFlow } from '../flow/check/check-flow.ts';
import { contentFiles } from './files.ts';
import { FLAG, readOptions } from './options.ts';
import { FLOW_FOLDER } from './places.ts';
import { json, type Said } from './said.ts';

/** `fit check [flow folder] [--paths] [--json]`: everything wrong with a flow folder, and its exact counts. */
export function check(args: readonly string[]): Said {
  const given = readOptions(args, { paths: FLAG, json: FLAG });
  const checked = checkFlow(contentFiles(given.files[0] ?? FLOW_FOLDER));
  const { findings, routes, answerPaths, shortest, longest } = checked;
  if (given.flag('json')) {
    const told = findings.map(({ code, severity, file, line, at, value }) => ({
      code,
      severity,
      file,
      line,
      at,
      value,
    }));
    return { text: json({ findings: told, routes, answerPaths, shortest, longest }), findings };
  }
  const counts = given.flag('paths')
    ? `routes ${routes}\nanswer paths ${answerPaths}\nshortest ${shortest} questions\nlongest ${longest} questions\n`
    : '';
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  return { text: `${counts}${errors === 0 ? 'The flow is sound.' : `${errors} found.`}\n`, findings };
}
