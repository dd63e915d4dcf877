import { describe, expect, it } from 'vitest';
import { healthSources, onlyHealth } from '../../src/card/private.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { twinOf } from '../../src/card/twin.ts';
import { cardOfVisit, knowledge, told, wordsIn } from './told.ts';

const byName = told.map((story) => [story.name, story] as const);
/** Cautions and first-tries that a fitter reads and a customer does not. */
const FITTERS = [...knowledge.cautions, ...knowledge.advice].filter(({ fitterOnly }) => fitterOnly);
/** On a `refer` card everybody reads every one of these. */
const STOPS: readonly string[] = ['now', 'today', 'before-choosing'];
/** What a reader of the page sees, with marks and entities undone. */
const seen = (html: string): string =>
  html
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'");

describe.each(byName)('the card of %s', (_, { visit, line, expected }) => {
  const facts = cardOfVisit(line);
  const text = textOf(facts, wordsIn(visit.language));
  const page = seen(twinOf(text));
  const words = wordsIn(visit.language);

  it('has a page of its own for the outcome, the pairs by name, and what it is not', () => {
    expect(text.outcome).toBe(expected.outcome);
    expect(page).toContain(text.title);
    expect(page).toContain(text.disclaimer);
    const first = line.shortlist.lineUps.flatMap(({ entries }) => entries.slice(0, 1));
    for (const { shoe } of first) expect(page).toContain(shoe.name);
    expect(text.fetch.boxes.length > 0).toBe(first.length > 0);
  });

  it('says in the open when nobody was asked about health', () => {
    expect(text.health.includes(words.say('card.health.not-asked'))).toBe(expected.hold === 'skipped');
  });

  it('prints the cautions that may be told, and every word of care', () => {
    const health = healthSources(knowledge.flow, visit);
    const open = line.profile.cautions.filter(
      ({ code, level, health: own, reasons }) =>
        !FITTERS.some(({ id }) => id === code) &&
        (visit.printHealth ||
          (expected.outcome === 'refer' && STOPS.includes(level)) ||
          !(own || onlyHealth(reasons, health))),
    );
    for (const { code } of open) expect(page, code).toContain(words.say(`caution.${code}.text`));
    // Where nothing may be bought, there is no shoe to care for.
    const care = expected.outcome !== 'refer';
    for (const { id, always, level } of knowledge.cautions)
      if (always) expect(page.includes(words.say(`caution.${id}.text`)), id).toBe(care || level !== 'upkeep');
  });

  it('keeps what is for the fitter to the fitter', () => {
    for (const { id } of knowledge.cautions.filter(({ fitterOnly }) => fitterOnly))
      expect(page).not.toContain(words.say(`caution.${id}.text`));
    expect(text.bench).toBeUndefined();
    expect(textOf(cardOfVisit(line, 'fitter'), wordsIn('en')).bench).toBeDefined();
  });
});

describe('what is for the fitter alone', () => {
  it('is on the fitter’s copy, even where the customer asked for health notes', () => {
    expect(FITTERS.length).toBeGreaterThan(0);
    const story = told.find(({ line }) =>
      line.profile.cautions.some(({ code }) => FITTERS.some(({ id }) => id === code)),
    );
    if (!story) throw new Error('No story raises a caution for the fitter alone');
    const codes = (consent: boolean, copy: 'customer' | 'fitter') =>
      cardOfVisit({ ...story.line, visit: { ...story.visit, printHealth: consent } }, copy).cautions.map((c) => c.code);
    const ids = FITTERS.map(({ id }) => id);
    expect(codes(false, 'fitter').filter((code) => ids.includes(code))).not.toEqual([]);
    for (const consent of [false, true])
      expect(codes(consent, 'customer').filter((code) => ids.includes(code))).toEqual([]);
  });
});

describe('in German', () => {
  it.each(byName)('the card of %s says the same without a hole', (_, { line }) => {
    const facts = cardOfVisit(line);
    const [english, german] = [textOf(facts, wordsIn('en')), textOf(facts, wordsIn('de'))];
    const shape = (text: typeof english) => [
      text.lineUps.length,
      text.cautions.map((c) => c.items.length),
      text.care.items.length,
      text.fetch.boxes.length,
    ];
    expect(shape(german)).toEqual(shape(english));
    expect(german.title).not.toBe(english.title);
  });
});
