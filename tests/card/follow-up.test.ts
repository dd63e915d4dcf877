import { expect, it } from 'vitest';
import { COPIES } from '../../src/card/card.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { sampleFacts, sampleLine, sampleWords } from './sample-lines.ts';

const STORY = 'netball-old-sprain';
const lead = (facts: ReturnType<typeof sampleFacts>) => textOf(facts, sampleWords('en')).lead.join(' ');

it.each(COPIES)('the final card, %s’s copy, says when to look in again with the chosen pair', (copy) => {
  const [first] = sampleLine(STORY).shortlist.lineUps[0]?.entries ?? [];
  if (!first) throw new Error('There is a pair');
  const choice = { kind: 'pair', shoe: first.shoe.id, box: first.boxes[0]?.box.id ?? '' } as const;
  const weeks = first.easeIn?.weeks.at(-1)?.week ?? 2;
  expect(lead(sampleFacts(STORY, copy, { choice }))).toContain(`Look in again after about ${weeks} weeks`);
  expect(lead(sampleFacts(STORY, copy))).not.toContain('Look in again');
  expect(lead(sampleFacts(STORY, copy, { choice: { kind: 'none', reason: 'price' } }))).not.toContain('Look in again');
});

it.each(COPIES)('the final card, %s’s copy, is about the pair that was chosen, and asks for nothing more', (copy) => {
  const [first, second] = sampleLine(STORY).shortlist.lineUps[0]?.entries ?? [];
  if (!first || !second) throw new Error('There are two pairs');
  const choice = {
    kind: 'pair',
    shoe: second.shoe.id,
    box: second.boxes[0]?.box.id ?? '',
    second: first.shoe.id,
  } as const;
  const text = textOf(sampleFacts(STORY, copy, { choice }), sampleWords('en'));
  const own = copy === 'customer';
  expect(text.title).toBe(`${own ? 'Your' : 'Chosen'} pair: ${second.shoe.name}`);
  // A fitter reads of it under the decision.
  const said = [...text.lead, ...(text.bench?.decision.items ?? [])].join(' ');
  expect(said).toContain(`Second choice: ${first.shoe.name}`);
  expect(text.fetch.heading).toBe(own ? 'Your box' : 'Chosen box');
  expect(text.fetch.boxes.map(({ name }) => name)).toEqual([second.shoe.name]);
  expect([text.tasks.gentle, text.tasks.moving, text.notes.choices]).toEqual([[], [], []]);
});
