import type { Profile } from '../../profile/profile.ts';
import { isStop } from '../../profile/stops.ts';
import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import { answersBehind } from './answers-behind.ts';

type Told = Pick<Profile, 'cautions' | 'facts' | 'hold'>;

/** A clinician's word lifted what stood in the way, and nothing else stops the line: care is needed all the same. */
export const isCleared = ({ cautions, facts, hold }: Told): boolean =>
  !isStop(hold) &&
  (cautions.some(({ cleared }) => cleared) ||
    (facts['cleared'] === true && facts['hold-carried'] === 'before-choosing'));

/** The health answers that were cleared, in their own words: for an opened ticket alone. */
export function clearedAnswers({ cautions }: Pick<Profile, 'cautions'>, words: Words): string {
  const answers = answersBehind(
    cautions.filter(({ cleared }) => cleared),
    words,
  );
  return listText(answers, words.language, 'and');
}

/** Feet that feel little cannot tell whether a shoe rubs or fits. */
export const feelLittle = ({ facts }: Pick<Profile, 'facts'>): boolean =>
  Array.isArray(facts['signs']) && facts['signs'].includes('numb-feet');
