import { describe, expect, it } from 'vitest';
import { ownOf, sharedBy } from '../../src/card/shared-by.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { sampleFacts, sampleLine, sampleWords, storyNames } from './sample-lines.ts';

const codes = (all: readonly { code: string }[] = []) => all.map(({ code }) => code);
const [mass, drop, bend] = ['mass', 'drop', 'bend'].map((each) => ({ code: `${each}-meets` })) as [
  { code: string },
  { code: string },
  { code: string },
];

describe('what all pairs of a line-up share', () => {
  it('is what each of them meets, the most important first', () => {
    expect(sharedBy([[mass, drop], [mass]])).toEqual([{ code: 'mass-meets' }]);
    expect(
      codes(
        sharedBy([
          [mass, drop, bend],
          [drop, mass],
          [mass, bend, drop],
        ]),
      ),
    ).toEqual(codes([mass, drop]));
    expect(codes(ownOf([mass, drop, bend], [mass, drop]))).toEqual(['bend-meets']);
  });

  it('is nothing where there is one pair, or none', () => {
    expect(sharedBy([[mass, drop]])).toEqual([]);
    expect(sharedBy([])).toEqual([]);
  });

  it('is said once, above them, and of none of them again', () => {
    let shared = 0;
    for (const story of storyNames) {
      const { lineUps } = sampleFacts(story, 'customer');
      for (const [at, lineUp] of lineUps.entries()) {
        const entries = sampleLine(story).shortlist.lineUps[at]?.entries ?? [];
        for (const of of ['reasons', 'misgivings'] as const) {
          const lists = lineUp.pairs.map((pair) => codes(pair[of]));
          const [first = [], ...more] = lists;
          if (more.length > 0) expect(first.filter((code) => more.every((list) => list.includes(code)))).toEqual([]);
          const all = codes(lineUp[of === 'reasons' ? 'sharedReasons' : 'sharedMisgivings']);
          shared += all.length;
          for (const entry of entries) expect(codes(entry[of])).toEqual(expect.arrayContaining(all));
        }
      }
    }
    expect(shared).toBeGreaterThan(storyNames.length);
  });

  it('reads as a sentence about all three, or both', () => {
    const [lineUp] = textOf(sampleFacts('netball-old-sprain', 'customer'), sampleWords('en')).lineUps;
    expect(lineUp?.sharedReasons).toMatch(/^all of them: .+ · /);
    expect(lineUp?.sharedMisgivings).toBe('all of them: a lower collar than we looked for');
  });

  it('is each pair’s own once a pair is decided on', () => {
    const before = sampleFacts('netball-old-sprain', 'customer');
    const shoe = before.lineUps[0]?.pairs[0]?.shoe ?? '';
    const after = sampleFacts('netball-old-sprain', 'customer', { choice: { kind: 'pair', shoe, box: '' } });
    expect(after.lineUps.every(({ sharedReasons }) => sharedReasons === undefined)).toBe(true);
    expect(codes(after.lineUps[0]?.pairs[0]?.reasons)).toContain(codes(before.lineUps[0]?.sharedReasons)[0]);
  });
});
