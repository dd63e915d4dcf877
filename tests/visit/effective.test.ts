import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inPlay } from '../../src/flow/route.ts';
import { effectiveAnswers, withOverrides } from '../../src/visit/effective.ts';
import { anyVisit, visitOf } from './any-visit.ts';
import { toyFlow, toyTables } from './toy-flow.ts';

const by = { by: 'Fitter', reason: 'asked again' };

describe('the answers that count', () => {
  it("effectiveAnswers: have the fitter's change over the customer's answer, which stays as it was", () => {
    const visit = visitOf(toyFlow, { mood: 'calm' }, { overrides: [{ question: 'mood', value: 'merry', ...by }] });
    expect(effectiveAnswers(visit, toyFlow)).toEqual({ mood: 'merry' });
    expect(visit.answers).toEqual({ mood: 'calm' });
  });

  it('leave out an answer that is off the route, and a change can put it off', () => {
    const answers = { mood: 'calm', floors: { ice: 'mostly' } };
    expect(effectiveAnswers(visitOf(toyFlow, answers), toyFlow)).toEqual(answers);
    const tired = visitOf(toyFlow, answers, { overrides: [{ question: 'mood', value: 'tired', ...by }] });
    expect(effectiveAnswers(tired, toyFlow)).toEqual({ mood: 'tired' });
  });

  it('follow the later of two changes', () => {
    const overrides = ['merry', 'tired'].map((value) => ({ question: 'mood', value, ...by }));
    expect(withOverrides(visitOf(toyFlow, {}, { overrides }))).toEqual({ mood: 'tired' });
  });

  it('are all in play, and each is the last word on its question', () => {
    fc.assert(
      fc.property(anyVisit(toyFlow, toyTables), (visit) => {
        const all = withOverrides(visit);
        const counted = effectiveAnswers(visit, toyFlow);
        for (const id of Object.keys(counted)) {
          expect(inPlay(toyFlow, all)).toContain(id);
          expect(counted[id]).toEqual(all[id]);
        }
      }),
    );
  });
});
