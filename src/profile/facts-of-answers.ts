import type { Answer, Answers, BodyWhen } from '../flow/answers.ts';
import type { Flow, Question } from '../flow/format.ts';
import { isQuantity } from '../flow/holds.ts';
import { questionsOf } from '../flow/route.ts';
import { byText, type Told } from './told.ts';

/** How much a mark on the body still counts, by how long ago it was. Source: common practice. */
const SINCE: Readonly<Record<BodyWhen, number>> = { now: 1, 'this-month': 0.75, 'this-year': 0.4, 'longer-ago': 0.15 };

/** Every answer as facts under its question's id, whatever its kind. */
export function factsOfAnswers(flow: Flow, answers: Answers): readonly Told[] {
  return questionsOf(flow).flatMap((question) => {
    const answer = answers[question.id];
    return answer === undefined ? [] : factsOfAnswer(question, answer);
  });
}

function factsOfAnswer({ id, kind }: Question, answer: Answer): readonly Told[] {
  if (typeof answer === 'string') return [{ key: id, value: answer, from: id }];
  if (typeof answer !== 'object' || answer === null) return [];
  if (Array.isArray(answer)) return [listFact(id, answer)];
  if (isQuantity(answer)) {
    return [
      { key: id, value: answer.value, from: id },
      { key: `${id}-unit`, value: String(answer.unit), from: id },
    ];
  }
  if (kind === 'shares') return [listFact(id, Object.keys(answer))];
  if (kind === 'against-today') return choiceFacts(id, answer);
  return kind === 'body-map' ? bodyFacts(id, answer) : [];
}

/** Sorted and each once: neither the order of taps nor a repeated tap says anything. */
function listFact(id: string, chosen: readonly unknown[]): Told {
  const words = chosen.filter((each) => typeof each === 'string');
  return { key: id, value: [...new Set(words)].sort(byText), from: id };
}

function choiceFacts(id: string, choices: object): readonly Told[] {
  return Object.entries(choices).flatMap(([property, choice]) =>
    typeof choice === 'string' ? [{ key: `${id}-${property}`, value: choice, from: `${id}:${property}` }] : [],
  );
}

function bodyFacts(id: string, marks: object): readonly Told[] {
  const known = Object.entries(marks).flatMap(([region, mark]) => {
    const since = isMark(mark) && Object.hasOwn(SINCE, mark.when) ? SINCE[mark.when] : undefined;
    return since === undefined ? [] : [{ region, when: mark.when, seen: mark.seen === true, since }];
  });
  return [
    listFact(
      id,
      known.map(({ region }) => region),
    ),
    ...known.flatMap(({ region, when, seen, since }): Told[] => {
      const from = `${id}:${region}`;
      return [
        { key: `${id}-${region}`, value: when, from },
        { key: `${id}-${region}-seen`, value: seen, from },
        { key: `${id}-${region}-since`, value: since, from },
      ];
    }),
  ];
}

const isMark = (mark: unknown): mark is { when: BodyWhen; seen: unknown } =>
  typeof mark === 'object' && mark !== null && 'when' in mark && typeof mark.when === 'string' && 'seen' in mark;
