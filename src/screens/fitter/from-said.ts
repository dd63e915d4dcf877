import { answerText } from '../../card/text/answer-text.ts';
import type { Answer, Answers } from '../../flow/answers.ts';
import type { Flow } from '../../flow/format.ts';
import { questionsOf } from '../../flow/route.ts';
import { partOf, questionOf } from '../../profile/from.ts';
import type { Words } from '../../words/words.ts';
import { fromText } from './why-text.ts';

/**
 * Where a reason comes from: the question, and what was answered. Of an answer in parts, the part that the reason rests
 * on; the question alone where nobody answered it.
 */
export function fromSaid(from: string, answers: Answers, flow: Flow, words: Words): string {
  const question = questionsOf(flow).find(({ id }) => id === questionOf(from));
  const given = question && answers[question.id];
  const counts = given === undefined ? undefined : partOfAnswer(given, partOf(from));
  if (question === undefined || counts === undefined) return fromText(from, words);
  return words.say('bench.needs.answered', {
    question: words.say(`question.${question.id}.ask`),
    answer: answerText(question, counts, words),
  });
}

function partOfAnswer(answer: Answer, part: string | undefined): Answer | undefined {
  if (part === undefined) return answer;
  if (typeof answer === 'string') return answer === part ? answer : undefined;
  if (Array.isArray(answer)) return answer.includes(part) ? [part] : undefined;
  const parts = Object.entries(answer).filter(([key]) => key === part);
  return parts.length > 0 ? (Object.fromEntries(parts) as Answer) : undefined;
}
