import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkFlow } from '../../src/flow/check/check-flow.ts';

const flows = new URL('../../flows/', import.meta.url);
const jsonIn = (folder: string) =>
  readdirSync(new URL(folder, flows))
    .filter((name) => name.endsWith('.json'))
    .map((name) => folder + name);

const paths = [
  'sources.json',
  ...jsonIn('fitting/'),
  ...jsonIn('fitting/stories/'),
  ...readdirSync(new URL('words/', flows)).flatMap((language) => jsonIn(`words/${language}/`)),
];
const checked = checkFlow(paths.map((path) => ({ path, text: readFileSync(new URL(path, flows), 'utf8') })));

test('nothing is wrong with the flow that the kiosk runs', () => {
  expect(checked.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
});

test('its routes and lengths are these, until a question is added or goes', () => {
  expect([checked.routes, checked.shortest, checked.longest]).toEqual([516, 6, 28]);
});

test('its answer paths are more than a JSON number holds, so they are told as text', () => {
  expect(BigInt(checked.answerPaths)).toBeGreaterThan(BigInt(Number.MAX_SAFE_INTEGER));
});
