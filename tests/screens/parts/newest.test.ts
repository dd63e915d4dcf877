import { expect, test } from 'vitest';
import { Newest } from '../../../src/screens/parts/newest.ts';

/** Something that arrives when told to. */
function late<T>(value: T) {
  let arrive = () => {};
  const promise = new Promise<T>((resolve) => {
    arrive = () => resolve(value);
  });
  return { promise, arrive };
}

test('the words asked for last are the ones that count, in whichever order they arrive', async () => {
  const words = new Newest<string>();
  const german = late('Wörter');
  const english = late('words');
  const first = words.of(german.promise);
  const second = words.of(english.promise);
  english.arrive();
  expect(await second).toBe('words');
  german.arrive();
  expect(await first).toBeUndefined();
});

test('what is asked for alone arrives, however late, and a failure is told', async () => {
  const words = new Newest<string>();
  expect(await words.of(Promise.resolve('words'))).toBe('words');
  await expect(words.of(Promise.reject(new Error('no such file')))).rejects.toThrow('no such file');
});
