import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { afterAll, expect, it } from 'vitest';
import { command, NURSE, ownFolder, STOCK, STORY } from './running.ts';

const own = ownFolder();
afterAll(own.gone);

it('two visitors in files of one name do not get one card between them', async () => {
  mkdirSync(own.at('a'));
  mkdirSync(own.at('b'));
  writeFileSync(own.at('a/x.json'), readFileSync(STORY));
  writeFileSync(own.at('b/x.json'), readFileSync(NURSE));
  const { code, err } = await command(
    'card',
    own.at('a/x.json'),
    own.at('b/x.json'),
    '--stock',
    STOCK,
    '--out',
    own.at('cards'),
  );
  expect(code).toBe(2);
  expect(err).toContain('x.pdf');
  expect(existsSync(own.at('cards'))).toBe(false);
});

it.each(['../schemas', 'en/', '..'])('a language that climbs out (%s) is no language', async (language) => {
  const { code } = await command('map', '--out', own.at('m.svg'), '--language', language);
  expect(code).toBe(2);
});

it('a file where a folder should be is said, not thrown', async () => {
  expect((await command('check', STOCK)).code).toBe(1);
});

it('a card for nowhere is not left in the folder one stands in', async () => {
  expect((await command('card', STORY, '--stock', STOCK, '--out', '')).code).toBe(2);
});

it('a story that an editor marked at its beginning is read as the story it is', async () => {
  writeFileSync(own.at('marked.json'), `\uFEFF${readFileSync(STORY, 'utf8')}`);
  expect((await command('profile', own.at('marked.json'))).code).toBe(0);
});

it('what a list says cannot clear the terminal of whoever reads it', async () => {
  writeFileSync(own.at('\u001B[2J.csv'), 'sparkle\n1\n');
  const { err } = await command('stock', own.at('\u001B[2J.csv'));
  expect(err).toContain('\\u001b[2J.csv');
  expect(err).not.toContain('\u001B');
});
