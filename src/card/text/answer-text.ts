import type { Answer, BodyMap, Quantity } from '../../flow/answers.ts';
import type { Question } from '../../flow/format.ts';
import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import { optionLabel } from './option-label.ts';
import { sizeInUnit } from './size-in-unit.ts';

/** An answer as a person would say it, for review and the bench. */
export function answerText(question: Question, answer: Answer, words: Words): string {
  const join = (parts: readonly string[]): string =>
    parts.length > 0 ? parts.join(' · ') : words.say('screen.review.nothing');
  switch (question.kind) {
    case 'yes-no':
      return words.say(answer === 'not-sure' ? 'screen.notSure' : `screen.${String(answer)}`);
    case 'one-of':
      return optionLabel(question, String(answer), words);
    case 'some-of':
    case 'signs':
      return join((answer as readonly string[]).map((id) => optionLabel(question, id, words)));
    case 'number': {
      if (answer === 'not-sure') return words.say('screen.notSure');
      const { value, unit } = answer as Quantity;
      return sizeInUnit(sizeText(value, words), unit, words);
    }
    case 'shares':
      return join(
        Object.entries(answer as Readonly<Record<string, string>>).map(([id, share]) => {
          const label = optionLabel(question, id, words);
          return isAlone(question, id) ? label : `${label}: ${words.say(`screen.share.${share}`)}`;
        }),
      );
    case 'against-today': {
      const said = (id: string, choice: string) => words.say(`question.${question.id}.property.${id}.choice.${choice}`);
      const wishes = Object.entries(answer as Readonly<Record<string, string>>)
        .filter(([, choice]) => choice !== 'no-preference')
        .map(([id, choice]) => `${words.say(`question.${question.id}.property.${id}.name`)}: ${said(id, choice)}`);
      const [any] = question.properties;
      return wishes.length > 0 || any === undefined ? join(wishes) : said(any.id, 'no-preference');
    }
    case 'body-map':
      if (typeof answer === 'string') return words.say('screen.review.skipped');
      return join(
        Object.entries(answer as BodyMap).map(([region, mark]) => {
          const seen = words.say(mark.seen ? 'screen.review.seen' : 'screen.review.notSeen');
          return `${words.say(`question.${question.id}.region.${region}`)} (${listText([words.say(`screen.when.${mark.when}`), seen], words.language)})`;
        }),
      );
  }
}

const isAlone = (question: Question, option: string): boolean =>
  'extra' in question && (question.extra ?? []).some(({ id, alone }) => id === option && alone === true);

/** Thirds are written as on a box: `42 2/3`. */
function sizeText(value: number, words: Words): string {
  const part = value - Math.floor(value);
  if (Math.abs(part - 1 / 3) < 0.01) return `${Math.floor(value)} 1/3`;
  if (Math.abs(part - 2 / 3) < 0.01) return `${Math.floor(value)} 2/3`;
  return words.number(value, Number.isInteger(value) ? 0 : 1);
}
