import { moneyText } from '../units/money-text.ts';
import type { FlowWords } from './flow-words.ts';
import type { Flow } from './format.ts';
import { spelledOptions } from './options.ts';
import { questionsOf } from './route.ts';

/**
 * Words in which the figure of every option that is a `sum` is written as money of this currency (ISO 4217). The words
 * themselves name the bare figure, which is all there is to say until the shop is known.
 *
 * @example
 * inCurrency(words, flow, 'EUR').say('question.budget.option.up-to-60') // 'Up to €60'
 */
export function inCurrency<W extends FlowWords>(words: W, flow: Flow, currency: string | undefined): W {
  if (currency === undefined) return words;
  const sums = new Map<string, number>(
    questionsOf(flow).flatMap((question) =>
      spelledOptions(question).flatMap(({ id, sum }) =>
        sum === undefined ? [] : [[`question.${question.id}.option.${id}`, sum] as const],
      ),
    ),
  );
  const say: FlowWords['say'] = (key, data) => {
    const sum = sums.get(key);
    const said = words.say(key, data);
    return sum === undefined ? said : said.replace(words.number(sum), () => moneyText(sum, currency, words.language));
  };
  return { ...words, say };
}
