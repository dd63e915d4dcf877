import { sayValue } from '../../attributes/say-value.ts';
import type { Words } from '../../words/words.ts';

/** A must in words: "price up to €90", "insole that comes out". */
export function mustText(must: string, value: string | number | boolean, currency: string, words: Words): string {
  const key = `lacks.must.${must}`;
  return words.has(key) ? words.say(key, { value: valueText(must, value, currency, words) }) : mustName(must, words);
}

/** A must's name alone: the shoe property's. */
export function mustName(must: string, words: Words): string {
  const key = `attribute.${must}.name`;
  return words.has(key) ? words.say(key) : must;
}

function valueText(must: string, value: string | number | boolean, currency: string, words: Words): string {
  if (must === 'price-max' && typeof value === 'number') return sayValue(words, 'price', value, currency);
  // `closure-not` is about the property `closure`, `material-not` about `materials`.
  const property = must.replace(/-not$/, '');
  const item = [property, `${property}s`]
    .map((each) => `attribute.${each}.item.${value}`)
    .find((each) => words.has(each));
  return item ? words.say(item) : String(value);
}
