import type { Count } from '../../gaps/gaps.ts';
import type { Words } from '../../words/words.ts';

/** Musts that forbid an item of a list that has another name. */
const LISTS: Readonly<Record<string, string>> = {
  'colour-not': 'colour',
  'closure-not': 'closure',
  'material-not': 'materials',
};
const DIRECTION = /^(.+)-(less|more|between)$/;

/** What a row of the sums is about, in words. What no word is known for is shown by its id, so that no count is lost. */
export function lackText({ topic, what }: Pick<Count, 'topic' | 'what'>, words: Words): string {
  switch (topic) {
    case 'need': {
      const [, attribute, direction] = DIRECTION.exec(what) ?? [];
      const name = `attribute.${attribute}.name`;
      return attribute && words.has(name) ? words.say(`lacks.need.${direction}`, { what: words.say(name) }) : what;
    }
    case 'must':
      return mustText(what, words);
    case 'size':
      return sizeText(what, words);
    case 'other-footwear':
      return spoken(`shop.lacks.kind.${what}`, what, words);
    default:
      return spoken(`lacks.${topic}.${what}`, what, words);
  }
}

function mustText(what: string, words: Words): string {
  const gap = what.indexOf(' ');
  const must = gap < 0 ? what : what.slice(0, gap);
  const value = gap < 0 ? '' : what.slice(gap + 1);
  const key = `lacks.must.${must}`;
  if (!words.has(key)) return what;
  const item = `attribute.${LISTS[must] ?? must}.item.${value}`;
  const shelf = `stock.shelf.${value}`;
  const named = must === 'shelf' && words.has(shelf) ? words.say(shelf) : words.has(item) ? words.say(item) : value;
  return words.say(key, { value: named });
}

/** `women eu 38`; `?` where the foot was not measured. */
function sizeText(what: string, words: Words): string {
  const [, shelf = '', label = ''] = /^(\S+) eu (.+)$/.exec(what) ?? [];
  const key = `stock.shelf.${shelf}`;
  if (!words.has(key)) return what;
  const size = label === '?' ? words.say('shop.lacks.size-unknown') : words.say('card.label.eu', { label });
  return `${words.say(key)} · ${size}`;
}

const spoken = (key: string, otherwise: string, words: Words): string => (words.has(key) ? words.say(key) : otherwise);
