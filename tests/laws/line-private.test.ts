import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CardFacts } from '../../src/card/card.ts';
import type { Answer } from '../../src/flow/answers.ts';
import { questionsOf } from '../../src/flow/route.ts';
import { readCardCode } from '../../src/visit/card-code.ts';
import { effectiveAnswers, withOverrides } from '../../src/visit/effective.ts';
import type { Visit } from '../../src/visit/visit.ts';
import { anyAnswer } from '../visit/any-visit.ts';
import { cardFor, knowledge, lineFor, shopping, tables, visits } from './line-kit.ts';
import { RUNS } from './runs.ts';

const HEALTH = questionsOf(knowledge.flow).filter(({ health }) => health);
const DECLINED = ['rather-not-say', 'no-grown-up', 'skipped'];
/** Declining is no health answer; the card says in the open that nobody was asked. */
const declines = (answer: Answer | undefined) =>
  [answer].flat().some((each) => typeof each === 'string' && DECLINED.includes(each));

/** Without consent, and with nobody having declined: what the law is about. */
const quiet = fc.oneof(visits, shopping).map(({ printHealth: _, hold: _hold, ...visit }): Visit => {
  const answers = Object.entries(visit.answers).filter(([, answer]) => !declines(answer));
  const overrides = visit.overrides.filter(({ value }) => !declines(value));
  return { ...visit, answers: Object.fromEntries(answers), overrides };
});
const changes = fc
  .constantFrom(...HEALTH)
  .chain((question) => fc.tuple(fc.constant(question.id), anyAnswer(question, tables)))
  .filter(([, answer]) => !declines(answer));

/** All but the pairs and their order, what is drawn of them, and the code, which has a law of its own. */
function besidePairs({ lineUps, strips, code: _, ...rest }: CardFacts) {
  return {
    ...rest,
    lineUps: lineUps.map((lineUp) => lineUp.for),
    strips: strips.map(({ pairs: _p, missing: _m, ...strip }) => strip),
  };
}

describe('a customer’s copy, without consent', () => {
  it('is the same but for the pairs when one health answer is another, and the outcome stays', () => {
    let compared = 0;
    fc.assert(
      fc.property(quiet, changes, fc.boolean(), (visit, [question, answer], byFitter) => {
        if (visit.answers[question] === undefined) return;
        const changed: Visit = byFitter
          ? {
              ...visit,
              overrides: [...visit.overrides, { question, value: answer, by: 'Fitter', reason: 'asked again' }],
            }
          : { ...visit, answers: { ...visit.answers, [question]: answer } };
        // An answer that is not offered to this customer is no answer: nobody was asked.
        if (effectiveAnswers(changed, knowledge.flow)[question] === undefined) return;
        const [before, after] = [cardFor(lineFor(visit)), cardFor(lineFor(changed))];
        if (after.outcome !== before.outcome) return;
        compared += 1;
        expect(besidePairs(after)).toEqual(besidePairs(before));
      }),
      { ...RUNS, numRuns: RUNS.numRuns * 2 },
    );
    expect(compared).toBeGreaterThan(10);
  });

  it('keeps a caution that an open answer gives too, when a health answer adds to its reasons', () => {
    const visit: Visit = {
      flow: 'fitting',
      flowVersion: 1,
      language: 'en',
      overrides: [],
      observation: {},
      tryOns: [],
      answers: {},
    };
    const codes = (body: Answer) =>
      cardFor(lineFor({ ...visit, answers: { lately: ['grown-six-weeks'], body } })).cautions.map(({ code }) => code);
    expect(codes({})).toContain('grow-slowly');
    expect(codes({ shin: { when: 'now', seen: false } })).toEqual(codes({}));
  });

  it('gives no reason or misgiving that follows from health, whoever wrote the answer down', () => {
    fc.assert(
      fc.property(shopping, changes, (visit, [question, answer]) => {
        const declined: Visit = {
          ...visit,
          printHealth: false,
          answers: { ...visit.answers, body: 'skipped', ankles: ['rather-not-say'] },
          overrides: [{ question, value: answer, by: 'Fitter', reason: 'told at the bench' }],
        };
        const line = lineFor(declined);
        const all = line.shortlist.lineUps.flatMap(({ entries }) => entries);
        const shown = cardFor(line).lineUps.flatMap(({ pairs }) => pairs);
        const told = (list: readonly { readonly from: string }[]) =>
          list.filter(({ from }) => from.split(':')[0] !== question).length;
        for (const [at, entry] of all.entries()) {
          expect(shown[at]?.reasons.length).toBeLessThanOrEqual(told(entry.reasons));
          expect(shown[at]?.misgivings.length).toBeLessThanOrEqual(told(entry.misgivings));
        }
      }),
      RUNS,
    );
  });

  it('has a code that holds no health answer', () => {
    fc.assert(
      fc.property(visits, ({ printHealth: _, ...visit }) => {
        const { value } = readCardCode(cardFor(lineFor(visit)).code, knowledge.flow, tables);
        expect(value).toBeDefined();
        const ids = HEALTH.map(({ id }) => id);
        expect(Object.keys(withOverrides(value as Visit)).filter((id) => ids.includes(id))).toEqual([]);
        expect(value?.hold).toBeDefined();
      }),
      RUNS,
    );
  });

  it('says nothing that is for the fitter alone', () => {
    const theirs = [...knowledge.cautions, ...knowledge.advice].filter((row) => row.fitterOnly).map(({ id }) => id);
    fc.assert(
      fc.property(visits, (visit) => {
        const { cautions, advice } = cardFor(lineFor(visit));
        expect([...cautions, ...advice].filter(({ code }) => theirs.includes(code))).toEqual([]);
      }),
      RUNS,
    );
  });
});
