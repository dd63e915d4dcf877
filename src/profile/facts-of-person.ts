import type { Answers } from '../flow/answers.ts';
import type { Told } from './told.ts';

const CHILD_BANDS: readonly unknown[] = ['under-6', '6-to-10', '11-to-17'];
const DECLINED = ['rather-not-say', 'skipped'];

/** Young or old, as far as told. Without an age the junior shelf counts as young, which only makes the line more careful. */
export function factsOfPerson(answers: Answers): readonly Told[] {
  const age = answers['age-band'];
  if (typeof age !== 'string' || DECLINED.includes(age)) {
    return answers['shelf'] === 'junior' ? [{ key: 'person-minor', value: true, from: 'shelf' }] : [];
  }
  return [
    { key: 'person-minor', value: CHILD_BANDS.includes(age), from: 'age-band' },
    { key: 'person-older', value: age === '65-plus', from: 'age-band' },
  ];
}
