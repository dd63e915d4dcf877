import type { Caution } from '../../profile/profile.ts';
import type { Words } from '../../words/words.ts';
import { optionText } from './why-text.ts';

/** The answers that some cautions rest on, in their own words, each once. */
export function answersBehind(cautions: readonly Pick<Caution, 'reasons'>[], words: Words): readonly string[] {
  const from = cautions.flatMap(({ reasons }) => reasons.map((each) => each.from));
  return [...new Set(from)].flatMap((each) => {
    const [question = '', option] = each.split(':');
    return option === undefined ? [] : [optionText({ question, option }, words)];
  });
}
