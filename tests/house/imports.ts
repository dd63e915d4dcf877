import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

/**
 * What a file's text imports as values, from where: `import`, `export … from`, `import()`, and workers by their address.
 * Only `import type` vanishes when types are stripped; `import { type X }` still loads the file.
 */
export function importsIn(text: string): readonly string[] {
  const code = text.replaceAll(/\/\*[\s\S]*?\*\//g, '').replaceAll(/^\s*\/\/.*$/gm, '');
  const froms = [...code.matchAll(/^\s*(?:import|export)\s+(type\s)?[^'";]*?\sfrom\s+'([^']+)'/gm)]
    .filter(([, type]) => !type)
    .map(([, , from]) => from);
  const others = [
    ...code.matchAll(/^\s*import\s+'([^']+)'/gm),
    ...code.matchAll(/\bimport\(\s*'([^']+)'/g),
    ...code.matchAll(/new URL\(\s*'([^']+\.ts)'/g),
  ].map(([, from]) => from);
  return [...froms, ...others].filter((from) => from !== undefined);
}

/** Every file that is reached from one by imports, and every package, with the chain that leads there. */
export function reachedFrom(start: string): ReadonlyMap<string, readonly string[]> {
  const reached = new Map<string, readonly string[]>([[start, [start]]]);
  const waiting = [start];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    const chain = reached.get(file) ?? [];
    for (const from of importsIn(readFileSync(file, 'utf8'))) {
      const bare = from.replace(/\?.*$/, '');
      const target = bare.startsWith('.') ? normalize(join(dirname(file), bare)) : bare;
      if (reached.has(target)) continue;
      reached.set(target, [...chain, target]);
      if (target.endsWith('.ts') && existsSync(target)) waiting.push(target);
    }
  }
  return reached;
}
