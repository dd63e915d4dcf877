import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { importsIn, reachedFrom } from './imports.ts';

const folder = mkdtempSync(join(tmpdir(), 'lacewing-load-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const isSchema = (target: string) =>
  target === 'zod' ||
  target.startsWith('zod/') ||
  target.startsWith('node:') ||
  /(^|\/)(flow\/(schema|check)|command-line)\//.test(target);
const schemaIn = (start: string) =>
  [...reachedFrom(start)].filter(([target]) => isSchema(target)).map(([, chain]) => chain.join(' → '));

describe('what the browser loads', () => {
  it.each(['src/screens/main.ts', 'src/screens/states/states-page.ts', 'src/worker/line-worker.ts'])(
    '%s reaches neither the schema library, nor Node, nor the command line',
    (start) => {
      const reached = reachedFrom(start);
      expect(reached.size).toBeGreaterThan(20);
      expect(schemaIn(start)).toEqual([]);
    },
  );

  it('is followed as far as the worker and the pages that load later', () => {
    const reached = [...reachedFrom('src/screens/main.ts').keys()];
    for (const file of ['src/worker/line-worker.ts', 'src/pipeline.ts', 'src/card/pdf.ts', 'pdfmake'])
      expect(
        reached.some((each) => each === file || each.startsWith(`${file}/`)),
        file,
      ).toBe(true);
  });

  it('would be caught with the schema library three files away', () => {
    mkdirSync(join(folder, 'flow/check'), { recursive: true });
    writeFileSync(
      join(folder, 'main.ts'),
      "import type { T } from './types.ts';\nconst later = () => import('./later.ts');\n",
    );
    writeFileSync(join(folder, 'types.ts'), "import { z } from 'zod';\n");
    writeFileSync(join(folder, 'later.ts'), "export { a } from './a.ts';\n");
    writeFileSync(join(folder, 'a.ts'), 'export const a = 1;\n');
    expect(schemaIn(join(folder, 'main.ts'))).toEqual([]);
    writeFileSync(join(folder, 'a.ts'), "import {\n  type Z,\n} from 'zod';\nexport const a = 1;\n");
    expect(schemaIn(join(folder, 'main.ts'))).toHaveLength(1);
  });

  it('importsIn: sees values, not types', () => {
    expect(importsIn("import type { A } from './a.ts';\nimport { b } from './b.ts';\nimport './c.css';\n")).toEqual([
      './b.ts',
      './c.css',
    ]);
  });
});
