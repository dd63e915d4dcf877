import type { Words } from '../words/words.ts';
import type { CardDoing } from './card.ts';
import type { PictureText } from './text/card-text.ts';

/** The drawings a card may show, by id: SVG texts of this project, loaded by whoever draws the card. */
export interface Pictures {
  /** By activity group. */
  readonly activities: Readonly<Record<string, string>>;
  readonly floors: Readonly<Record<string, string>>;
}
export const NO_PICTURES: Pictures = { activities: {}, floors: {} };

/** What the shoes are for and where, as drawings with their words. One that has not been drawn is left out. */
export function picturesText(doing: CardDoing | undefined, pictures: Pictures, words: Words): readonly PictureText[] {
  if (!doing) return [];
  const activity = pictures.activities[doing.group];
  const floor = doing.floor && pictures.floors[doing.floor];
  return [
    ...(activity ? [{ svg: activity, says: words.say(`activity.${doing.activity}`) }] : []),
    ...(floor ? [{ svg: floor, says: words.say(`floor.${doing.floor}`) }] : []),
  ];
}
