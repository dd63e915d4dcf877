import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openVisit } from '../../src/card/private.ts';
import type { Answer } from '../../src/flow/answers.ts';
import { routeOf } from '../../src/flow/route.ts';
import { meets } from '../../src/shortlist/musts.ts';
import { partsOf } from '../../src/shortlist/parts-of.ts';
import { effectiveAnswers, withOverrides } from '../../src/visit/effective.ts';
import { HOLDS, type Visit } from '../../src/visit/visit.ts';
import { anyAnswers } from '../visit/any-visit.ts';
import { cardFor, knowledge, lineFor, shopping, shuffled, stock, tables, visits } from './line-kit.ts';
import { RUNS } from './runs.ts';

const said = (visit: Visit, of = knowledge, from = stock) => {
  const { profile, shortlist } = lineFor(visit, of, from);
  return JSON.stringify({ profile, shortlist });
};

describe('the line from answers to pairs', () => {
  it('does not depend on the order of rules, answers, or lines in the stock list', () => {
    fc.assert(
      fc.property(
        shopping,
        shuffled(knowledge.rules),
        shuffled(stock.shoes),
        shuffled(stock.boxes),
        fc.nat(),
        (visit, rules, shoes, boxes, turn) => {
          const turned = (list: readonly string[]) => [
            ...list.slice(turn % list.length),
            ...list.slice(0, turn % list.length),
          ];
          const answers = Object.fromEntries(
            Object.entries(visit.answers)
              .reverse()
              .map(([id, answer]): [string, Answer] => [
                id,
                Array.isArray(answer) && answer.length > 0 ? turned(answer as readonly string[]) : answer,
              ]),
          );
          expect(said({ ...visit, answers }, { ...knowledge, rules }, { ...stock, shoes, boxes })).toBe(said(visit));
        },
      ),
      RUNS,
    );
  });

  it('takes no notice of answers off the route, down to the code on the card', () => {
    fc.assert(
      fc.property(visits, anyAnswers(knowledge.flow, tables), (visit, others) => {
        const { overrides: _, ...rest } = visit;
        const own: Visit = { ...rest, overrides: [] };
        const route = routeOf(knowledge.flow, own.answers);
        const strayFrom = (asked: readonly string[]): Visit => {
          const stray = Object.fromEntries(Object.entries(others).filter(([id]) => !asked.includes(id)));
          return { ...own, answers: { ...stray, ...route.answers } };
        };
        const plain = { ...own, answers: route.answers };
        const full = strayFrom(route.asked);
        expect(said(full)).toBe(said(plain));
        expect(cardFor(lineFor(full), 'fitter')).toEqual(cardFor(lineFor(plain), 'fitter'));
        // The customer's copy is that of somebody without health answers, whom a sign may have spared more questions.
        const open = strayFrom([
          ...route.asked,
          ...routeOf(knowledge.flow, openVisit(own, knowledge.flow).answers).asked,
        ]);
        expect(cardFor(lineFor(open), 'customer')).toEqual(cardFor(lineFor(plain), 'customer'));
      }),
      RUNS,
    );
  });

  it('gives the same again when asked again, to the byte', () => {
    fc.assert(
      fc.property(visits, (visit) => {
        expect(said(structuredClone(visit))).toBe(said(visit));
      }),
      RUNS,
    );
  });
});

describe('the pairs', () => {
  it('each pass every must, in a box that is on hand', () => {
    let pairs = 0;
    fc.assert(
      fc.property(fc.oneof(visits, shopping), (visit) => {
        const { profile, shortlist } = lineFor(visit);
        const parts = partsOf(profile);
        for (const [at, { entries, more }] of shortlist.lineUps.entries()) {
          for (const { shoe, boxes } of [...entries, ...more]) {
            pairs += 1;
            for (const must of parts[at]?.musts ?? []) expect(meets(shoe, must), must.attribute).toBe('yes');
            for (const { box, fits } of boxes) expect([fits !== 'no', box.onHand > box.reserved]).toEqual([true, true]);
          }
        }
        const shown = cardFor(lineFor(visit)).lineUps.flatMap((lineUp) => lineUp.pairs.map(({ shoe }) => shoe));
        expect(shown).toEqual(shortlist.lineUps.flatMap(({ entries }) => entries.map(({ shoe }) => shoe.id)));
      }),
      RUNS,
    );
    expect(pairs).toBeGreaterThan(20);
  });

  it('have no reason left from an answer that was taken back', () => {
    fc.assert(
      fc.property(shopping, fc.nat(), (visit, pick) => {
        const meetsIn = (of: Visit) =>
          lineFor(of).shortlist.lineUps.flatMap(({ entries, more }) =>
            [...entries, ...more].flatMap(({ reasons, misgivings }) => [...reasons, ...misgivings]),
          );
        const traced = [...new Set(meetsIn(visit).map(({ from }) => from.split(':')[0] ?? from))].filter(
          (from) => from !== 'stock',
        );
        const taken = traced[pick % Math.max(1, traced.length)];
        if (!taken) return;
        const there = { ...effectiveAnswers(visit, knowledge.flow) };
        if (taken !== 'observation') expect(Object.keys(there)).toContain(taken);
        const { [taken]: _gone, ...answers } = visit.answers;
        const left: Visit = taken === 'observation' ? { ...visit, observation: {} } : { ...visit, answers };
        expect(meetsIn(left).filter(({ from }) => from === taken || from.startsWith(`${taken}:`))).toEqual([]);
      }),
      RUNS,
    );
  });
});

describe('a sign to act on now or today', () => {
  /** With what each alone comes to, so that a new sign is held to the law as well. */
  const question = knowledge.flow.sections.flatMap(({ questions }) => questions).find(({ id }) => id === 'signs');
  const options =
    question?.kind === 'signs' ? question.options.filter(({ alone, showWhen }) => !alone && !showWhen) : [];
  const blank: Visit = {
    flow: 'fitting',
    flowVersion: 1,
    language: 'en',
    answers: {},
    overrides: [],
    observation: {},
    tryOns: [],
  };
  const urgent = options
    .map(({ id }) => ({ id, hold: lineFor({ ...blank, answers: { signs: [id] } }).profile.hold }))
    .filter(({ hold }) => hold === 'now' || hold === 'today');

  it('sells nothing, whatever else is answered, changed, cleared or carried', () => {
    expect(urgent.length).toBeGreaterThan(3);
    fc.assert(
      fc.property(visits, fc.constantFrom(...urgent), fc.boolean(), (visit, { id, hold }, late) => {
        const change = { question: 'signs', value: [id], by: 'Fitter', reason: 'said so late' };
        const signed: Visit = late
          ? { ...visit, overrides: [...visit.overrides, change] }
          : { ...visit, answers: { ...visit.answers, signs: [id] } };
        const line = lineFor(signed);
        expect(line.profile.outcome).toBe('refer');
        expect(HOLDS.indexOf(line.profile.hold)).toBeGreaterThanOrEqual(HOLDS.indexOf(hold));
        expect(line.shortlist.lineUps).toEqual([]);
        const card = cardFor(line);
        expect(card.lineUps).toEqual([]);
        expect(card.cautions.some(({ level }) => level === 'now' || level === 'today')).toBe(true);
      }),
      RUNS,
    );
  });

  it('is not undone by a later change that leaves it out', () => {
    fc.assert(
      fc.property(visits, fc.constantFrom(...urgent), (visit, { id }) => {
        const undo = { question: 'signs', value: ['none'], by: 'Fitter', reason: 'slip of the finger' };
        const signed = { ...visit, answers: { ...visit.answers, signs: [id] }, overrides: [...visit.overrides, undo] };
        expect(withOverrides(signed)['signs']).toEqual(['none']);
        expect(lineFor(signed).profile.outcome).toBe('refer');
      }),
      RUNS,
    );
  });
});
