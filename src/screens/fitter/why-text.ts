import { asMeasured } from '../../attributes/as-measured.ts';
import type { AttributeKey } from '../../attributes/attributes.ts';
import { sayValue } from '../../attributes/say-value.ts';
import { adviceText } from '../../card/text/advice-text.ts';
import { mustName } from '../../card/text/must-text.ts';
import type { Must, Need } from '../../profile/profile.ts';
import type { Why } from '../../profile/why.ts';
import type { WhatIf } from '../../shortlist/shortlist.ts';
import { moneyText } from '../../units/money-text.ts';
import type { Words } from '../../words/words.ts';
import { firstWords } from './first-words.ts';

/** From these importances on a need is called so. Our choice: thirds of the scale. */
const MUCH = 2 / 3;
const SOME = 1 / 3;

/** More than a little: it is in sight without a tap. */
export const isFelt = ({ importance }: Pick<Need, 'importance'>): boolean => importance >= SOME;

export const importanceText = ({ importance }: Pick<Need, 'importance'>, words: Words): string =>
  words.say(`bench.importance.${importance >= MUCH ? 'much' : importance >= SOME ? 'some' : 'little'}`);

/** A wanted range in words, as finely as a hand can measure: "medium to soft", "4 mm to 8 mm", "255 g to 360 g". */
export function idealText(key: AttributeKey, ideal: readonly [number, number], currency: string, words: Words): string {
  const [low = '', high = ''] = asMeasured(key, ideal).map((value) => sayValue(words, key, value, currency));
  return low === high ? low : words.say('bench.range', { from: low, to: high });
}

export const needName = (key: string, words: Words): string => words.say(`card.strip.${key}.name`);

export function mustText(
  { attribute: must, value }: Pick<Must, 'attribute' | 'value'>,
  currency: string,
  words: Words,
): string {
  const key = `lacks.must.${must}`;
  const said =
    must === 'price-max' ? moneyText(Number(value), currency, words.language) : valueText(must, String(value), words);
  return words.has(key) ? words.say(key, { value: said }) : `${mustName(must, words)}: ${said}`;
}

/** Lists whose entries a must names under a name of its own. */
const LIST_OF: Readonly<Record<string, string>> = {
  'closure-not': 'closure',
  'material-not': 'materials',
  'colour-not': 'colour',
};
function valueText(must: string, value: string, words: Words): string {
  const keys = [`attribute.${LIST_OF[must] ?? must}.item.${value}`, `question.${must}.option.${value}`];
  const key = keys.find((each) => words.has(each));
  return key === undefined ? value : words.say(key);
}

/** Where a reason comes from, in the question's own words. */
export function fromText(from: string, words: Words): string {
  const [question = from, part] = from.split(':');
  if (question === 'observation') return words.say('card.bench.observation');
  const key = `question.${question}.ask`;
  if (!words.has(key)) return words.has(`bench.from.${question}`) ? words.say(`bench.from.${question}`) : question;
  const of =
    part &&
    [`region.${part}`, `option.${part}`, `property.${part}.name`]
      .map((tail) => `question.${question}.${tail}`)
      .find((each) => words.has(each));
  return of ? `${words.say(key)} ${words.say(of)}` : words.say(key);
}

/** An option in its question's words, or in its table's. */
export function optionText({ question, property, option }: Omit<WhatIf, 'shoe'>, words: Words): string {
  const own = `question.${question}`;
  const keys = property
    ? [`${own}.property.${property}.choice.${option}`]
    : [
        `${own}.option.${option}`,
        `${own}.region.${option}`,
        `activity.${option}`,
        `floor.${option}`,
        `shoe-kind.${option}`,
      ];
  const key = [...keys, `screen.${option}`].find((each) => words.has(each));
  return key === undefined ? option : words.say(key);
}

/** What a line of the profile is about: in a word or two, or in the first words of what is said of it elsewhere. */
export function aboutText(
  { kind, about, value }: Pick<Why, 'kind' | 'about' | 'value'>,
  toeRoom: readonly [number, number],
  currency: string,
  words: Words,
): string {
  switch (kind) {
    case 'need':
    case 'conflict':
      return needName(about, words);
    case 'must':
      return words.say('bench.led.must', {
        what: mustText({ attribute: about, value: value ?? true }, currency, words),
      });
    case 'caution':
      return words.say('bench.led.caution', { what: firstWords(words.say(`caution.${about}.text`)) });
    case 'advice':
      return words.say('bench.led.advice', { what: firstWords(adviceText(about, toeRoom, words)) });
    case 'outcome':
      return words.say('bench.led.outcome', { what: words.say(`bench.outcome.${about}`) });
  }
}
