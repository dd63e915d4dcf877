import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { NumberQuestion } from '../../src/flow/format.ts';
import { rareSize } from '../../src/screens/customer/questions/rare-size.ts';
import { rareAtAge } from '../../src/sizing/rare-at-age.ts';

const json = (file: string) => JSON.parse(readFileSync(`flows/fitting/${file}`, 'utf8'));
const units: NumberQuestion['units'] = json('flow.json')
  .sections.flatMap(({ questions }: { questions: readonly { id: string }[] }) => questions)
  .find(({ id }: { id: string }) => id === 'now-size').units;

describe('a size that is typed', () => {
  it.each([
    [20.5, 'eu', '6-to-10', { value: 20.5, unit: 'cm' }],
    [44, 'eu', '6-to-10', undefined],
    [44, 'eu', 'under-6', undefined],
    [12, 'uk', '6-to-10', { value: 12, unit: 'uk-child' }],
    [25, 'eu', '11-to-17', { value: 25, unit: 'cm' }],
    [27, 'eu', '18-to-64', { value: 27, unit: 'cm' }],
    [27, 'eu', '65-plus', { value: 27, unit: 'cm' }],
  ])('%s %s is asked about again at %s, with what was probably meant', (value, unit, age, meant) => {
    const rare = rareSize({ value, unit }, age, units);
    expect(rare).toMatchObject({ code: 'rare-at-age', keep: { value, unit } });
    expect(rare?.meant).toEqual(meant);
  });

  // Means of girls and boys at three, and of those grown: Cheng, in Children 2022;9:750.
  it.each([
    [153, 'under-6'],
    [156, 'under-6'],
    [156, '6-to-10'],
    [234, '6-to-10'],
    [258, '6-to-10'],
    [234, '11-to-17'],
    [258, '11-to-17'],
    [234, '18-to-64'],
    [258, '65-plus'],
  ])('%s mm is taken at %s without a word', (value, age) => {
    expect(rareAtAge({ value, unit: 'mm' }, age)).toBe(false);
  });

  it.each([[undefined], ['rather-not-say']])('is taken as it is where the age told is %s', (age) => {
    expect(rareSize({ value: 16, unit: 'eu' }, age, units)).toBeUndefined();
    expect(rareSize({ value: 52, unit: 'eu' }, age, units)).toBeUndefined();
  });

  it('is taken as it is from every named visitor', () => {
    const asked = readdirSync('flows/fitting/stories').filter((story) => {
      const { answers } = json(`stories/${story}`);
      return typeof answers['now-size'] === 'object' && rareAtAge(answers['now-size'], answers['age-band']);
    });
    expect(asked).toEqual([]);
  });
});
