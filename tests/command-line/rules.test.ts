import { cpSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { MAIN } from '../profile/main-knowledge.ts';
import { command, ownFolder, spoilt } from './running.ts';

const own = ownFolder();
afterAll(own.gone);

describe('on what the rules rest', () => {
  it('counts every rule once by grade', async () => {
    const { counts } = JSON.parse((await command('rules', '--json')).out);
    const { all, unpublished, kind: _, ...grades } = counts[0];
    expect(all).toBe(MAIN.rules.length);
    expect(Object.values(grades as Record<string, number>).reduce((sum, count) => sum + count, 0)).toBe(all);
    expect(unpublished).toBe(MAIN.rules.filter(({ source }) => source === 'common-practice').length);
  });

  it('names every rule that has no published source, with its reason, and no other', async () => {
    const { code, out } = await command('rules');
    expect(code).toBe(0);
    const named = [...out.matchAll(/^ {2}\S+ +(\S+) +\[/gm)].map(([, id]) => id);
    const loose = MAIN.rules.filter(({ source, known }) => source === 'common-practice' || known === 'memory');
    expect(named).toEqual(loose.map(({ id }) => id));
    expect(out).toContain('[common-practice] Landing hard asks for some give underfoot.');
  });

  it('says of a remembered rule that it is from memory, though it has a source', async () => {
    const folder = own.at('flows/fitting');
    cpSync('flows', own.at('flows'), { recursive: true });
    const from = '"source": "knapik-2014", "grade": "strong", "known": ';
    spoilt('flows/fitting/rules.json', `${folder}/rules.json`, (text) =>
      text.replace(`${from}"read"`, `${from}"memory"`),
    );
    const { out } = await command('rules', folder);
    expect(out).toMatch(/past-support-no-difference +\[strong, from memory\]/);
  });
});
