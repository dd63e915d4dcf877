import { type Answer, BODY_WHEN, BODY_WORDS, SHARES, YES_NO } from '../../src/flow/answers.ts';
import type { Flow, Option, Question } from '../../src/flow/format.ts';
import { offeredOptions } from '../../src/flow/options.ts';
import { firstPlace, inPlay, placeAfter, questionsOf, routeOf } from '../../src/flow/route.ts';
import { isAnswer } from '../../src/flow/valid-answer.ts';
import { TOY_NUMBERS, TOY_TABLES } from './toy-flows.ts';

/** Every answer a toy question takes, by trying everything and keeping what will do. Slow, and nothing to get wrong. */
export function everyAnswer(question: Question, offered: readonly Option[]): readonly Answer[] {
  return everything(question, offered).filter((value) => isAnswer(question, value, TOY_TABLES, offered));
}

function everything(question: Question, offered: readonly Option[]): readonly Answer[] {
  const ids = offered.map(({ id }) => id);
  switch (question.kind) {
    case 'one-of':
      return ids;
    case 'yes-no':
      return YES_NO;
    case 'some-of':
    case 'signs':
      return everyMap(ids, ['in']).map((map) => Object.keys(map));
    case 'number':
      return TOY_NUMBERS[question.id] ?? [];
    case 'shares':
      return everyMap(ids, SHARES);
    case 'against-today':
      return everyMap(
        question.properties.map(({ id }) => id),
        [...new Set(question.properties.flatMap(({ choices }) => choices))],
      );
    case 'body-map': {
      const marks = BODY_WHEN.flatMap((when) => [true, false].map((seen) => ({ when, seen })));
      const maps = everyMap(
        question.regions.map(({ id }) => id),
        marks,
      );
      return [...maps, ...BODY_WORDS];
    }
  }
}

/** Every map that gives each key one of the values or leaves it out. */
function everyMap<T>(keys: readonly string[], values: readonly T[]): readonly Readonly<Record<string, T>>[] {
  let maps: readonly Readonly<Record<string, T>>[] = [{}];
  for (const key of keys) maps = maps.flatMap((map) => [map, ...values.map((value) => ({ ...map, [key]: value }))]);
  return maps;
}

/** Tries every answer to every question, one after another, and counts. */
export function bruteForce(flow: Flow): {
  readonly routes: number;
  readonly answerPaths: number;
  readonly lengths: readonly number[];
} {
  const routes = new Set<string>();
  const lengths: number[] = [];
  const from = (place: string, answers: Readonly<Record<string, Answer>>): number => {
    const question = questionsOf(flow).find(({ id }) => id === place);
    if (!question) {
      routes.add(inPlay(flow, answers).join());
      lengths.push(inPlay(flow, answers).length);
      return 1;
    }
    const offered = offeredOptions(question, TOY_TABLES, routeOf(flow, answers).answers);
    return everyAnswer(question, offered)
      .map((value) => ({ ...answers, [place]: value }))
      .reduce((sum, next) => sum + from(placeAfter(flow, next, place, false), next), 0);
  };
  const answerPaths = from(firstPlace(flow, {}), {});
  return { routes: routes.size, answerPaths, lengths };
}
