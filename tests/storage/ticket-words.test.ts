import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../src/storage/memory-store.ts';
import { ticketWords } from '../../src/storage/ticket-words.ts';
import { nextTicket } from '../../src/storage/tickets.ts';
import { missingInCardFont } from '../card/card-font.ts';
import { LANGUAGES } from '../words/word-files.ts';

/** How many letters must be put in, left out or changed to make one word of another. */
function letterSteps(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (let j = 1; j <= b.length; j++) {
      const swap = (row[j - 1] ?? 0) + (letter === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}

describe.each(LANGUAGES)('the tickets of a shop that speaks %s', (language) => {
  const words = ticketWords(language, language);

  it('have words of its own', () => {
    for (const other of LANGUAGES.filter((each) => each !== language)) {
      const theirs = ticketWords(other, other);
      expect(words.filter((word) => theirs.includes(word)).length, other).toBeLessThan(words.length / 4);
    }
  });

  it('have another word than the ones around them, until all have been round', async () => {
    const store = memoryStore();
    const round = new Set<string>();
    for (const _ of words)
      round.add((await nextTicket(store, '2026-11-25', { fitters: language, visit: language })).word);
    expect([...round].sort()).toEqual([...words].sort());
  });

  it('have no two words that are easily taken for one another when called out', () => {
    const plain = words.map((word) => word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase());
    const alike = plain.flatMap((a, at) =>
      plain
        .slice(at + 1)
        .filter((b) => letterSteps(a, b) < 3)
        .map((b) => `${a} / ${b}`),
    );
    expect(alike).toEqual([]);
  });
});

describe('the word of a ticket', () => {
  it('is in the fitters’ language, whatever the customer speaks', () => {
    expect(ticketWords('de', 'ar')).toEqual(ticketWords('de', 'de'));
    expect(ticketWords('es-MX', 'fr')).toEqual(ticketWords('es', 'es'));
  });

  it('can be printed on every card of a visit, also where the fitters’ letters cannot', () => {
    const lacking = LANGUAGES.flatMap((fitters) =>
      LANGUAGES.filter((visit) => visit !== 'ar').flatMap((visit) =>
        ticketWords(fitters, visit).flatMap((word) => missingInCardFont(word).map((char) => `${word}: ${char}`)),
      ),
    );
    expect(lacking).toEqual([]);
  });

  it('is English in a shop whose language has no list', () => {
    expect(ticketWords('nl', 'de')).toEqual(ticketWords('en', 'en'));
  });
});
