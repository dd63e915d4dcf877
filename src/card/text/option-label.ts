import type { Question } from '../../flow/format.ts';
import type { Words } from '../../words/words.ts';

const ROW_WORDS = { activities: 'activity', floors: 'floor', 'shoe-kinds': 'shoe-kind' } as const;

/** The words of one option: its question's own, or its table row's. */
export function optionLabel(question: Question, option: string, words: Words): string {
  const own = `question.${question.id}.option.${option}`;
  if (words.has(own) || !('options' in question) || !('table' in question.options)) return words.say(own);
  return words.say(`${ROW_WORDS[question.options.table]}.${option}`);
}
