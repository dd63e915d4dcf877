import { describe, expect, test } from 'vitest';
import { getSimplePaths } from 'xstate/graph';
import type { Flow } from '../../src/flow/format.ts';
import { offeredOptions } from '../../src/flow/options.ts';
import { questionsOf, routeOf } from '../../src/flow/route.ts';
import { walk } from '../../src/flow/walk.ts';
import { interviewMachine } from '../../src/interview/machine.ts';
import { bruteForce, everyAnswer } from '../flow/every-answer.ts';
import { TOY_TABLES, TOYS } from '../flow/toy-flows.ts';

/**
 * Independent of the walk: XState's own search for simple paths (package `xstate`, `xstate/graph`), run on the machine.
 * States are told apart by value and answers; by value alone it misses answers that lead to the same question.
 */
function graphPaths(flow: Flow, byAnswers = true) {
  const questions = new Map(questionsOf(flow).map((question) => [question.id, question]));
  return getSimplePaths(interviewMachine(flow, TOY_TABLES), {
    serializeState: ({ value, context }) => JSON.stringify(byAnswers ? [value, context.answers] : value),
    events: ({ context }) => {
      if (context.at === 'welcome') return [{ type: 'start' as const }];
      const question = questions.get(context.at);
      if (!question) return [];
      const offered = offeredOptions(question, TOY_TABLES, routeOf(flow, context.answers).answers);
      return everyAnswer(question, offered).map((value) => ({ type: 'answer' as const, question: question.id, value }));
    },
    toState: ({ context }) => context.at === 'review',
  });
}

const routeAlong = (path: ReturnType<typeof graphPaths>[number]): string =>
  path.steps.flatMap(({ event }) => ('question' in event ? [event.question] : [])).join();

describe('routes and answer paths counted without trying every answer', () => {
  for (const flow of TOYS) {
    const walked = walk(flow, TOY_TABLES);

    test(`are those of trying every answer: ${flow.id}`, () => {
      const tried = bruteForce(flow);
      expect([walked.routes, walked.answerPaths]).toEqual([BigInt(tried.routes), BigInt(tried.answerPaths)]);
      expect([walked.shortest, walked.longest]).toEqual([Math.min(...tried.lengths), Math.max(...tried.lengths)]);
    });

    test(`are those of xstate/graph on the machine: ${flow.id}`, () => {
      const paths = graphPaths(flow);
      expect(walked.answerPaths).toBe(BigInt(paths.length));
      expect(walked.routes).toBe(BigInt(new Set(paths.map(routeAlong)).size));
    });
  }

  test('cannot be had from xstate/graph by state value alone', () => {
    const [picnic] = TOYS;
    if (!picnic) throw new Error('No toy flow');
    expect(BigInt(graphPaths(picnic, false).length)).toBeLessThan(walk(picnic, TOY_TABLES).answerPaths);
  });

  test('come to these numbers by hand', () => {
    // One forks three ways, one of them asks further: 2 × 1 + 1 × 3 answers; routes with and without the second question.
    const [first] = TOYS;
    if (!first) throw new Error('No toy flow');
    const flow: Flow = {
      ...first,
      sections: [
        {
          id: 'only',
          questions: [
            { id: 'weather', kind: 'one-of', options: [{ id: 'sun' }, { id: 'rain' }, { id: 'wind' }] },
            { id: 'umbrella', kind: 'yes-no', askWhen: { of: 'weather', is: 'rain' } },
          ],
        },
      ],
    };
    expect(walk(flow, TOY_TABLES)).toMatchObject({ routes: 2n, answerPaths: 5n, shortest: 1, longest: 2 });
  });
});
