import { describe, expect, it } from 'vitest';
import { textOf } from '../../src/card/text/text-of.ts';
import { lineOf } from '../../src/pipeline.ts';
import type { Visit } from '../../src/visit/visit.ts';
import { decidedLine } from '../../src/worker/bench-line.ts';
import { cardOfVisit, knowledge, stock, told, wordsIn } from './told.ts';

const storyOf = (name: string) => {
  const found = told.find((story) => story.name === name);
  if (!found) throw new Error(`No story ${name}`);
  return found;
};
const textFor = (name: string, printHealth = false) => {
  const { line, visit } = storyOf(name);
  return textOf(cardOfVisit({ ...line, visit: { ...visit, printHealth } }), wordsIn('en'));
};

describe('a customer who reads the card finds what they asked for', () => {
  it('the sole that leaves no marks, and the budget', () => {
    expect(textFor('badminton-non-marking').musts).toContain('non-marking sole');
    const priced = told.filter(({ line }) => line.profile.musts.some(({ attribute }) => attribute === 'price-max'));
    expect(priced.length).toBeGreaterThan(3);
    for (const { name, line } of priced) {
      if (line.shortlist.lineUps.some(({ entries }) => entries.length > 0))
        expect(textFor(name).musts, name).toContain('price up to €');
    }
  });

  it('but not what follows from health alone, unless they asked to have it printed', () => {
    const { visit } = storyOf('netball-old-sprain');
    const withInsole: Visit = { ...visit, answers: { ...visit.answers, inside: ['own-insole'] } };
    const line = lineOf(withInsole, knowledge, stock, 1, false);
    const musts = (printHealth: boolean) =>
      cardOfVisit({ ...line, visit: { ...withInsole, printHealth } }).musts.map(({ must }) => must);
    expect(line.profile.musts.map(({ attribute }) => attribute)).toContain('removable-insole');
    expect(musts(false)).not.toContain('removable-insole');
    expect(musts(true)).toContain('removable-insole');
  });

  it('the size first, where they came for nothing else', () => {
    const text = textFor('just-the-size');
    expect(text.title).toMatch(/^Your size: about (EU|UK|US)/);
    expect(text.sizeFirst).toBe(true);
    expect(textFor('netball-old-sprain').title).not.toContain('Your size');
  });
});

describe('a card that names the room at the toes', () => {
  it('names one room, wherever it does', () => {
    const named = told.flatMap(({ name, line }) => {
      const facts = cardOfVisit(line);
      const room = facts.advice.some(({ code }) => code === 'size-first' || code === 'room-to-grow');
      return room && facts.size ? [{ name, toeRoom: facts.size.toeRoom }] : [];
    });
    expect(named.length).toBeGreaterThan(2);
    // Else one fixed pair of figures in the words would pass.
    expect(new Set(named.map(({ toeRoom }) => toeRoom.join())).size).toBeGreaterThan(1);
    for (const { name, toeRoom } of named) {
      const { advice, size } = textFor(name);
      const said = advice.items.filter((item) => / \d+ to \d+ mm /.test(item));
      expect(said.length, name).toBeGreaterThan(0);
      for (const item of said) expect(item, name).toContain(`${toeRoom[0]} to ${toeRoom[1]} mm`);
      if (size?.rows.length) expect(size.rows.map(({ value }) => value)).toContain(`${toeRoom[0]} to ${toeRoom[1]} mm`);
    }
  });
});

describe('once a pair is chosen', () => {
  it('the card says nothing more of musts, which a pair pulled in by hand may not meet', () => {
    const { line, visit } = storyOf('badminton-non-marking');
    const [entry] = line.shortlist.lineUps.flatMap(({ entries }) => entries);
    const box = entry?.boxes[0]?.box.id ?? '';
    const choice = { kind: 'pair' as const, shoe: entry?.shoe.id ?? '', box };
    const decided = decidedLine({ ...line, visit: { ...visit, choice } }, knowledge, stock);
    const text = textOf(cardOfVisit(decided), wordsIn('en'));
    expect(text.title).toContain('Your pair');
    expect(text.musts).toBeUndefined();
    expect(decided.shortlist.lineUps.map(({ moreWithout }) => moreWithout)).toEqual([undefined]);
  });
});
