import type { Words } from '../../words/words.ts';

/** A piece of advice in words. Where it names the room in front of the toes, it is this customer's, millimetres. */
export const adviceText = (code: string, [from, to]: readonly [number, number], words: Words): string =>
  words.say(`advice.${code}.text`, { from: words.number(from, 0), to: words.number(to, 0) });
