import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { command, NURSE, ownFolder, STOCK, STORY, secondHouse, spoilt } from './running.ts';

const own = ownFolder();
afterAll(own.gone);

const swap = (from: string | RegExp, to: string) => (text: string) => text.replace(from, to);
/** `file:line, place: what and what to do`. */
const named = (file: string) => new RegExp(`${file.replaceAll('.', '\\.')}:\\d+`);

describe('answers and stories that are wrong', () => {
  it.each([
    ['broken JSON', swap('"flow":', '"flow"'), /JSON/],
    ['a question nobody asks', swap('"shelf":', '"shelves":'), /shelves/],
    ['an activity nobody knows', swap('"activity": "trail-running"', '"activity": "moon-walking"'), /moon-walking/],
    ['a sign nobody knows', swap('"signs": ["none"]', '"signs": ["sparkle"]'), /sparkle/],
    ['a shoe kind nobody knows', swap('"now-kind": "trail"', '"now-kind": "slipper"'), /slipper/],
    ['a size that is no size', swap('"value": 9.5', '"value": 950'), /950/],
    ['letters for a size', swap('"value": 9.5', '"value": "nine"'), /now-size/],
    ['a unit nobody knows', swap('"unit": "us-men"', '"unit": "yards"'), /yards/],
    ['another flow', swap('"flow": "fitting"', '"flow": "hats"'), /hats/],
    ['a language without words', swap('"language": "en"', '"language": "xx"'), /xx/],
    ['a field nobody knows', swap('"answers":', '"sparkle": 1, "answers":'), /sparkle/],
    ['a story without a name', swap('"name":', '"title":'), /name/],
    ['an answer said twice', swap('"shelf": "men"', '"shelf": "men", "shelf": "women"'), /shelf/],
  ])('%s: named with file and line, exit 1, nothing written', async (what, change, said) => {
    const file = spoilt(STORY, own.at('wrong.json'), change);
    for (const args of [
      ['profile', file],
      ['shortlist', file, '--stock', STOCK],
      ['card', NURSE, file, '--stock', STOCK, '--out', own.at('cards')],
    ]) {
      const { code, out, err } = await command(...args);
      expect([code, out], what).toEqual([1, '']);
      expect(err).toMatch(named('wrong.json'));
      expect(err).toMatch(said);
    }
    expect(readdirSync(own.at('.'))).toEqual(['wrong.json']);
  });

  it('contradict each other: questioned, and carried on with', async () => {
    const file = spoilt(NURSE, own.at('wrong.json'), swap('"activity": "nursing",', ''));
    const { code, out, err } = await command('profile', file);
    expect(code).toBe(0);
    expect(err).toContain('answers › hours: There are hours, but no activity. What are they spent on?');
    // Nothing is made up for the activity.
    expect(out).not.toContain('made-for');
  });

  it.each([
    ['regions', swap('"heel": {', '"elbow": {'), /elbow/],
    ['floors', swap('"tiles": "mostly"', '"lava": "mostly"'), /lava/],
  ])('name %s nobody knows', async (_, change, said) => {
    const { code, err } = await command('profile', spoilt(NURSE, own.at('wrong.json'), change));
    expect(code).toBe(1);
    expect(err).toMatch(said);
  });
});

describe('stock that is wrong', () => {
  const wrong = (text: string) => {
    writeFileSync(own.at('wrong.csv'), text);
    return own.at('wrong.csv');
  };

  it('of which nothing loads: exit 1, nothing written', async () => {
    for (const text of ['', 'sparkle\n1\n', '\u0000\u0001']) {
      const file = wrong(text);
      expect((await command('stock', file)).code).toBe(1);
      const card = await command('card', STORY, '--stock', file, '--out', own.at('card.pdf'));
      expect(card.code).toBe(1);
      expect(card.err).toContain('wrong.csv');
      expect(existsSync(own.at('card.pdf'))).toBe(false);
    }
  });

  it('in one line: named with line, column and value, and the rest serves', async () => {
    const file = spoilt(STOCK, own.at('wrong.csv'), (text) => {
      const lines = text.split('\n');
      return [
        ...lines.slice(0, 5),
        lines[5]?.replace(/^([^,]*,[^,]*,[^,]*,[^,]*,)[^,]*/, '$1feather'),
        ...lines.slice(6),
      ].join('\n');
    });
    const told = await command('stock', file, '--json');
    expect(told.code).toBe(1);
    expect(JSON.parse(told.out)).toMatchObject({
      refused: 1,
      findings: [{ line: 6, column: 'mass (g)', value: 'feather' }],
    });
    expect(told.err).toMatch(/wrong\.csv:6, column mass/);
    expect((await command('shortlist', STORY, '--stock', file)).code).toBe(0);
  });
});

describe('a shop file that is wrong', () => {
  it.each([
    ['broken', swap('{', '')],
    ['without its name', swap('"name":', '"title":')],
  ])('%s: exit 1, nothing written', async (_, change) => {
    const shop = spoilt('demo/shop.json', own.at('shop.json'), change);
    const { code, err } = await command('card', STORY, '--stock', STOCK, '--out', own.at('card.pdf'), '--shop', shop);
    expect(code).toBe(1);
    expect(err).toContain('shop.json');
    expect(existsSync(own.at('card.pdf'))).toBe(false);
  });
});

describe('content that is wrong', () => {
  let house: Awaited<ReturnType<typeof secondHouse>>;
  beforeAll(async () => {
    house = await secondHouse(own.at('house'));
  });

  it.each([
    ['a flow', 'flows/fitting/flow.json', swap('"kind":"one-of"', '"kind":"one-off"')],
    ['a flow', 'flows/fitting/flow.json', swap('{', '{{')],
    ['rules', 'flows/fitting/rules.json', swap('"grade": "', '"grade": "very ')],
    ['activities', 'flows/fitting/activities.json', swap('"group"', '"gruop"')],
    ['words', 'flows/fitting/words.en.json', swap(',', ',,')],
    ['shared words', 'flows/words/en/card.json', swap('{', '')],
    ['words that are null', 'flows/words/en/card.json', swap(/[\s\S]+/, 'null')],
    ['a sentence that is null', 'flows/words/en/card.json', swap(/: "[^"]+"/, ': null')],
    ['a sentence that is a number', 'flows/fitting/words.en.json', swap(/: "[^"]+"/, ': 7')],
    ['a sentence that is a list', 'flows/words/en/size.json', swap(/: "[^"]+"/, ': ["x"]')],
    ['a template', 'print-templates/a5/template.json', swap('"page"', '"paper"')],
    ['a template', 'print-templates/a5/template.json', swap('{', '[')],
    ['a template', 'print-templates/a5/template.json', swap('"sides": [', '"sides": {"length": {}}, "old": [')],
    ['a flow', 'flows/fitting/flow.json', swap(/"sections": ?\[/, '"sections": {"length": {}}, "old": [')],
    ['an activity', 'flows/fitting/activities.json', swap(/"uses": ?\[[^\]]*\]/, '"uses": {"length": {}}')],
  ])('%s in %s: named with file and line, exit 1, nothing written', async (_, path, change) => {
    const mend = house.spoil(path, change);
    const { code, out, err } = await house.command('card', STORY, '--stock', STOCK, '--out', own.at('house/cards'));
    mend();
    expect([code, out], err).toEqual([1, '']);
    expect(err).toMatch(named(path.split('/').at(-1) ?? ''));
    expect(err).not.toMatch(/^\s+at /m);
    expect(existsSync(own.at('house/cards'))).toBe(false);
  });

  it('a language half translated: the sentence that is missing, and nothing written', async () => {
    const mend = house.spoil('flows/words/de/card.json', swap(/[\s\S]+/, '{"card": {}}'));
    const { code, err } = await house.command(
      'card',
      STORY,
      '--stock',
      STOCK,
      '--out',
      own.at('house/cards'),
      '--language',
      'de',
    );
    mend();
    expect(code).toBe(1);
    expect(err).toMatch(/words\/de: The words “card\.[\w.-]+” are missing in this language/);
    expect(err).not.toMatch(/^\s+at /m);
  });

  it('a rule that rests on nothing: check says so, by file and line', async () => {
    const mend = house.spoil('flows/fitting/rules.json', swap(/"source": "[a-z0-9-]+"/, '"source": "no-such-paper"'));
    const { code, err } = await house.command('check');
    mend();
    expect(code).toBe(1);
    expect(err).toMatch(/rules\.json:\d+.*no-such-paper/);
  });
});
