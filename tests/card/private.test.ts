import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CardFacts, CardMeets, Copy } from '../../src/card/card.ts';
import { healthSources, isHealth, openVisit } from '../../src/card/private.ts';
import { readShop } from '../../src/card/read-shop.ts';
import { loadKnowledge, loadStock, loadVisit } from '../../src/command-line/load.ts';
import type { Answers } from '../../src/flow/answers.ts';
import { tablesOf } from '../../src/flow/options.ts';
import { cardOfLine, type Line, lineOf } from '../../src/pipeline.ts';
import { MOST_SAID } from '../../src/shortlist/meets.ts';
import { readCardCode } from '../../src/visit/card-code.ts';
import type { Visit } from '../../src/visit/visit.ts';

const knowledge = loadKnowledge();
const { stock: whole } = loadStock('demo/stock.csv', '2026-11-25T09:12:00');
/** A part of the demo stock: what is said beside the pairs does not depend on how many there are. */
const few = whole.shoes.filter((_, at) => at % 5 === 0);
const stock = { ...whole, shoes: few, boxes: whole.boxes.filter((box) => few.some((shoe) => shoe.id === box.shoe)) };
const shop = readShop(readFileSync('demo/shop.json', 'utf8'), 'demo/shop.json').value;
if (!shop) throw new Error('The demo shop file reads');
const stories = readdirSync('flows/fitting/stories').map((name) => ({
  name,
  visit: loadVisit(`flows/fitting/stories/${name}`, knowledge).visit,
}));

/** Without the search for the one answer that would change the first pair: it costs most of the time, see below. */
const cardFor = (visit: Visit, copy: Copy = 'customer'): CardFacts =>
  cardOfThe(lineOf(visit, knowledge, stock, 1, false), copy);
const cardOfThe = (line: Line, copy: Copy): CardFacts =>
  cardOfLine(line, knowledge, stock, { shop, date: '2026-11-25', ticket: 'maple 14', copy });

/** A customer's copy without its pairs, what is drawn of them and whether their labels differ from the calculated size, and without the code, which has a test of its own. */
function rest(facts: CardFacts): unknown {
  const { lineUps: _, strips, code: __, size, ...others } = facts;
  return {
    ...others,
    size: { ...size, labelsDiffer: undefined },
    strips: strips.map(({ pairs: _p, missing: _m, ...strip }) => strip),
  };
}

/** Health answers that decline nothing: declining is openly said on the card. */
const HEALTH: readonly (readonly [string, Answers[string]])[] = [
  ['signs', ['none']],
  ['conditions', ['none']],
  ['conditions', ['diabetes']],
  ['conditions', ['pregnant']],
  ['conditions', ['falls-or-unsteady']],
  ['conditions', ['evening-swelling']],
  ['body', {}],
  ['body', { heel: { when: 'now', seen: true } }],
  ['body', { knee: { when: 'this-year', seen: false }, calf: { when: 'now', seen: false } }],
  ['body', { 'big-toe-joint': { when: 'this-month', seen: true } }],
  ['ankles', ['none']],
  ['ankles', ['over-six-weeks']],
  ['ankles', ['gives-way', 'brace']],
  ['inside', ['none']],
  ['inside', ['thick-sock']],
  ['inside', ['own-insole']],
];

const consenting = ({ visit }: (typeof stories)[number]) => visit.printHealth === true;
const declining = ({ visit }: (typeof stories)[number]) =>
  ['signs', 'conditions', 'body', 'ankles', 'inside'].some((id) =>
    ['rather-not-say', 'no-grown-up', 'skipped'].some((word) => [visit.answers[id]].flat().includes(word as never)),
  );
const quiet = stories.filter((story) => !consenting(story) && !declining(story));

describe('a customer who did not ask for health notes', () => {
  it.each(quiet)('carries away the same card whatever else they answered about health: $name', ({ visit }) => {
    const before = cardFor(visit);
    const turn = stories.findIndex((story) => story.visit === visit);
    for (const [index, [question, answer]] of HEALTH.entries()) {
      // A third of the answers for each story; between them the stories meet all of them several times.
      if (visit.answers[question] === undefined || (index + turn) % 3 !== 0) continue;
      const after = cardFor({ ...visit, answers: { ...visit.answers, [question]: answer as never } });
      if (after.outcome !== before.outcome) continue;
      expect(rest(after), `${question} ${JSON.stringify(answer)}`).toEqual(rest(before));
    }
  });

  it('carries away the same card, for health answers drawn at random', () => {
    fc.assert(
      fc.property(fc.constantFrom(...quiet), fc.subarray([...HEALTH], { minLength: 1 }), ({ visit }, drawn) => {
        const changes = Object.fromEntries(drawn.filter(([id]) => visit.answers[id] !== undefined));
        const before = cardFor(visit);
        const after = cardFor({ ...visit, answers: { ...visit.answers, ...changes } as Answers });
        if (after.outcome === before.outcome) expect(rest(after)).toEqual(rest(before));
      }),
      { numRuns: 25, seed: 20261125 },
    );
  });

  it('has no pair with a reason or misgiving that is traced to a health answer, and as much to say as any other', () => {
    for (const { visit } of quiet) {
      const health = healthSources(knowledge.flow, visit);
      const line = lineOf(visit, knowledge, stock, 1, false);
      const card = cardOfThe(line, 'customer').lineUps;
      const pairs = card.flatMap((lineUp) => lineUp.pairs);
      const sharers = card.flatMap((lineUp) => lineUp.pairs.map(() => lineUp));
      for (const [at, entry] of line.shortlist.lineUps.flatMap((lineUp) => lineUp.entries).entries()) {
        const open = (all: typeof entry.reasons) =>
          all
            .filter((each) => !each.health && !isHealth(each.from, health) && each.code !== 'last-pair')
            .map(({ code }) => code);
        const codes = (all: readonly CardMeets[] = []) => all.map(({ code }) => code);
        for (const of of ['reasons', 'misgivings'] as const) {
          const shared = codes(sharers[at]?.[of === 'reasons' ? 'sharedReasons' : 'sharedMisgivings']);
          const own = codes(pairs[at]?.[of]);
          const may = open(entry[of]);
          expect(may).toEqual(expect.arrayContaining([...shared, ...own]));
          // Three in all, wherever an open answer gives so many.
          expect(shared.length + own.length).toBeGreaterThanOrEqual(Math.min(MOST_SAID, may.length));
        }
        expect([...(pairs[at]?.reasons ?? []), ...(pairs[at]?.misgivings ?? [])].every((each) => !each.from)).toBe(
          true,
        );
      }
    }
  });

  it('has no word of the one answer that would change the first pair, where that answer is about health', () => {
    const whatIf = { question: 'ankles', option: 'brace', shoe: 'any' };
    const [story] = quiet;
    if (!story) throw new Error('There is a story without consent');
    const line = lineOf(story.visit, knowledge, stock, 1, false);
    const [first] = line.shortlist.lineUps;
    if (!first) throw new Error('The story has a line-up');
    const withIt = (question: string): Line => ({
      ...line,
      shortlist: { ...line.shortlist, lineUps: [{ ...first, whatIf: { ...whatIf, question } }] },
    });
    expect(cardOfThe(withIt('ankles'), 'customer').lineUps[0]?.whatIf).toBeUndefined();
    expect(cardOfThe(withIt('activity'), 'customer').lineUps[0]?.whatIf).toBeDefined();
    expect(cardOfThe(withIt('ankles'), 'fitter').lineUps[0]?.whatIf).toBeDefined();
  });

  it('has a code that holds no health answer, and a hold', () => {
    const ids = knowledge.flow.sections
      .flatMap((s) => s.questions)
      .filter((q) => q.health)
      .map((q) => q.id);
    for (const { visit } of quiet) {
      const read = readCardCode(cardFor(visit).code, knowledge.flow, tablesOf(knowledge)).value;
      expect(read?.hold).toBeDefined();
      expect(ids.filter((id) => read?.answers[id] !== undefined)).toEqual([]);
    }
  });
});

describe('a customer who asked for health notes', () => {
  it('has the cautions that follow from them on the card', () => {
    const changed = stories.filter(({ visit }) => {
      const told = cardFor({ ...visit, printHealth: true }).cautions.map((c) => c.code);
      const untold = cardFor({ ...visit, printHealth: false }).cautions.map((c) => c.code);
      return told.join() !== untold.join();
    });
    expect(changed.length).toBeGreaterThan(2);
  });
});

describe('a fitter’s copy', () => {
  it('has every need with its reasons, and the tasks that are open to this customer and no others', () => {
    const sprain = stories.find(({ name }) => name.startsWith('netball-old-sprain'));
    if (!sprain) throw new Error('The story of an old sprain is there');
    const facts = cardFor(
      { ...sprain.visit, answers: { ...sprain.visit.answers, ankles: ['over-six-weeks'] } },
      'fitter',
    );
    expect(facts.bench?.needs.length).toBeGreaterThan(0);
    expect(facts.tasks).toMatchObject({ moving: [], needsFitter: false });
  });
});

describe('the open visit', () => {
  it('answers every health question with none of these', () => {
    const visit = quiet[0]?.visit;
    if (!visit) throw new Error('There is a story without consent');
    expect(openVisit(visit, knowledge.flow).answers['signs']).toEqual(['none']);
  });
});
