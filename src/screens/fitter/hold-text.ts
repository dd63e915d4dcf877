import type { Profile } from '../../profile/profile.ts';
import type { Words } from '../../words/words.ts';
import { answersBehind } from './answers-behind.ts';

type Told = Pick<Profile, 'cautions' | 'hold'>;

/** How careful to be, for an open ticket. Where nothing stops the line but health asks for care, what to take care of. */
export function holdText({ cautions, hold }: Told, words: Words): string {
  const care = hold === 'none' ? cautions.filter(({ level, health }) => level === 'mind' && health) : [];
  if (care.length === 0) return words.say(`bench.hold.${hold}`);
  const what = answersBehind(care, words).join(' · ');
  return what ? words.say('bench.hold.heed', { what }) : words.say('bench.hold.mind');
}

/**
 * How careful to be, for the list of tickets, where others may read along. Any caution will do for "something to mind",
 * so that it does not tell whether health is behind it.
 */
export const holdOfList = ({ cautions, hold }: Told): Profile['hold'] | 'mind' =>
  hold === 'none' && cautions.some(({ level }) => level === 'mind') ? 'mind' : hold;
