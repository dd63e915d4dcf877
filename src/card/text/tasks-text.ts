import type { Words } from '../../words/words.ts';
import type { CardFacts } from '../card.ts';
import type { TasksText, TaskText } from './card-text.ts';

/** Without pairs there is nothing to try. */
const NO_TASKS: CardFacts['tasks'] = { gentle: [], moving: [], needsFitter: false };

/** What to try at the bench and what to feel for, with a box to tick for each pair. */
export function tasksText(facts: CardFacts, letters: readonly string[], words: Words): TasksText {
  const { gentle, moving, needsFitter } = letters.length > 0 ? facts.tasks : NO_TASKS;
  const say = (task: string): TaskText => ({
    name: words.say(`task.${task}.name`),
    feel: words.say(`task.${task}.feel`),
  });
  return {
    heading: words.say('card.tasks.heading'),
    safety: [words.say('card.tasks.stop'), ...(facts.healthAsked ? [] : [words.say('card.tasks.gentle-only')])],
    gentle: gentle.map(say),
    ...(needsFitter ? { tick: words.say('card.tasks.tick') } : {}),
    moving: moving.map(say),
    letters,
  };
}
