import { optionLabel } from '../../card/text/option-label.ts';
import type { Answers } from '../../flow/answers.ts';
import type { Question } from '../../flow/format.ts';
import { offeredOptions, type Tables } from '../../flow/options.ts';
import type { Words } from '../../words/words.ts';
import type { Offered } from './offered.ts';

/**
 * The options to show, with their words. A second activity leaves out the first; a yes-no question has its three.
 */
export function offeredWithLabels(
  question: Question,
  tables: Tables,
  answersInPlay: Answers,
  words: Words,
): readonly Offered[] {
  if (question.kind === 'yes-no') {
    return ['yes', 'no', 'not-sure'].map((id) => ({
      id,
      alone: false,
      label: words.say(id === 'not-sure' ? 'screen.notSure' : `screen.${id}`),
    }));
  }
  const groups =
    'options' in question && 'table' in question.options
      ? new Map(tables[question.options.table].map((row) => [row.id, row.group]))
      : new Map<string, string>();
  return offeredOptions(question, tables, answersInPlay)
    .filter(({ id }) => question.id !== 'second-activity' || id !== answersInPlay['activity'])
    .map((option) => {
      const group = groups.get(option.id);
      return {
        id: option.id,
        alone: option.alone === true,
        label: optionLabel(question, option.id, words),
        ...(group ? { group } : {}),
      };
    });
}
