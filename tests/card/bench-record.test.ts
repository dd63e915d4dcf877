import { describe, expect, it } from 'vitest';
import { layoutCard } from '../../src/card/layout/layout-card.ts';
import { BLOCKS } from '../../src/card/template.ts';
import type { CardText } from '../../src/card/text/card-text.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { twinOf } from '../../src/card/twin.ts';
import type { Visit } from '../../src/visit/visit.ts';
import { atTheBench } from './bench-visit.ts';
import { misplaced } from './on-paper.ts';
import { SAMPLE_FORMATS, sampleFacts, sampleLine, sampleWords } from './sample-lines.ts';
import { measure, toyTemplate } from './toy-card.ts';

const STORY = 'netball-old-sprain';
const LANGUAGES = ['en', 'de', 'fr', 'es', 'ar'] as const;
const fitters = (change: Partial<Visit>, language = 'en', story = STORY): CardText =>
  textOf(sampleFacts(story, 'fitter', change), sampleWords(language));

/** A word parted at the end of a line is one word. */
const plain = (text: string) => text.replaceAll(/[\s\u00ad-]/g, '');
const onPaper = (text: CardText, format: string) => {
  const template = toyTemplate(format);
  const { pages } = layoutCard(text, template, measure);
  const said = pages.flatMap((page) => page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])));
  return {
    said: plain(said.join(' ')),
    pages: pages.length,
    wrong: pages.flatMap((page) => misplaced(page, template)),
  };
};

/** Every word of the record, cell by cell: what must be read somewhere on the fitter's copy. */
function recordOf({ bench }: CardText): readonly string[] {
  if (!bench) return [];
  const { decision, tried, feet, changes } = bench;
  const table = ({ heading, columns, rows, notes }: typeof tried) =>
    rows.length > 0 ? [heading, ...columns, ...rows.flatMap(({ name, cells }) => [name, ...cells]), ...notes] : [];
  return [
    ...(decision.items.length > 0 ? [decision.heading, ...decision.items] : []),
    ...table(tried),
    ...table(feet),
    ...(changes.items.length > 0 ? [changes.heading] : []),
    ...changes.items.flatMap(({ ask, said }) => [ask, said]),
  ].filter((each) => each !== '');
}

describe('the fitter’s copy', () => {
  it('tells what was answered, what it was changed to, by whom and why', () => {
    const items = fitters(atTheBench(STORY)).bench?.changes.items;
    expect(items).toContainEqual({
      ask: 'What will be under your feet?',
      said: 'Said: Sports hall floor: Mostly. Now: Wood that gives a little: Mostly (MK: asked again).',
    });
    expect(items).toContainEqual({
      ask: 'What size is on your shoe or its box?',
      said: 'Said: UK 6.5. Now: EU 42.5 (MK: read on the tongue of the old pair).',
    });
  });

  it('tells every change of an answer in its turn', () => {
    const change = (reason: string, value: number) =>
      ({ question: 'now-size', value: { value, unit: 'eu' }, by: 'LT', reason }) as const;
    const overrides = [change('asked-again', 42), change('seen', 43)];
    expect(fitters({ overrides }).bench?.changes.items.map(({ said }) => said)).toEqual([
      'Said: UK 6.5. Now: EU 42 (LT: asked again). Now: EU 43 (LT: seen at the bench).',
    ]);
  });

  it('has every measure of both feet, and how they were taken', () => {
    expect(fitters(atTheBench(STORY)).bench?.feet).toMatchObject({
      columns: ['left', 'right'],
      rows: [
        { name: 'Foot length', cells: ['262 mm', '265 mm'] },
        { name: 'Round the ball', cells: ['248 mm', '250.5 mm'] },
        { name: 'Width at the ball', cells: ['101 mm', '102 mm'] },
        { name: 'Heel width', cells: ['66 mm', ''] },
        { name: 'Round the instep', cells: ['251 mm', ''] },
      ],
      notes: ['standing on both feet · in the sock to be worn · late in the day'],
    });
  });

  it('has the short note of a pair as it was typed, and never as markup', () => {
    const record = atTheBench(STORY);
    const [first, ...rest] = record.tryOns;
    if (!first) throw new Error('There is a first pair');
    const text = fitters({ ...record, tryOns: [{ ...first, note: '<b>laces</b> too short' }, ...rest] });
    expect(text.bench?.tried.rows.at(-1)).toEqual({ name: 'Short note', cells: ['', '<b>laces</b> too short', ''] });
    expect(twinOf(text)).toContain('&lt;b&gt;laces');
  });

  it('has each pair as it was on the feet, the customer’s favourite first', () => {
    const record = atTheBench(STORY);
    const tried = fitters(record).bench?.tried;
    const [first, second, third] = sampleLine(STORY, {
      overrides: record.overrides,
      observation: record.observation,
    }).shortlist.lineUps.flatMap(({ entries }) => entries.map(({ shoe }) => shoe.name));
    expect(tried?.columns).toEqual([second, first, third]);
    const rows = Object.fromEntries((tried?.rows ?? []).map(({ name, cells }) => [name, cells]));
    expect(rows).toMatchObject({
      "Customer's order": ['1', '2', '3'],
      Size: ['right', 'right', 'too small'],
      'Gap at the laces': ['even', 'even', 'wide open'],
      Heel: ['holds', 'lifts a little', 'holds'],
      'Middle of the foot': ['snug', 'snug', 'presses'],
      'Room at the toes': ['right', 'right', 'short'],
      'Where it rubs': ['', 'left: Heel · right: Heel · right: Little toe', 'left: Ball, outer side'],
      'Comfort, 0 to 100': ['82', '64', '35'],
    });
    expect(rows['Box fetched']?.every((cell) => /^(UK|EU) /.test(cell))).toBe(true);
  });

  it('has two boxes of one pair beside each other, and knows a box that has left the list by its mark', () => {
    const [tried] = atTheBench(STORY).tryOns;
    if (!tried) throw new Error('A pair was tried');
    const { rank: _rank, ...before } = tried;
    const { bench } = fitters({ tryOns: [{ ...before, box: 'gone-42', size: 'too-small' }, tried] });
    expect(bench?.tried.columns).toHaveLength(2);
    expect(bench?.tried.rows[0]?.cells[0]).toBe('gone-42');
    expect(bench?.tried.rows.find(({ name }) => name === 'Size')?.cells).toEqual(['too small', 'right']);
  });

  it('has the decision: the pair and the second choice, or none and why', () => {
    const record = atTheBench(STORY);
    const items = fitters(record).bench?.decision.items ?? [];
    expect(items[0]).toMatch(/^Pair: .+ · (UK|EU) \d/);
    expect(items[1]).toMatch(/^Second choice: ./);
    expect(fitters({ choice: { kind: 'none', reason: 'thinks-it-over' } }).bench?.decision.items).toEqual([
      'No pair: thinks it over',
    ]);
  });

  it('has no pair as decided where a stop came up afterwards', () => {
    const { choice } = atTheBench(STORY);
    const stopped = sampleFacts('hot-swollen-calf', 'fitter', { ...(choice && { choice }) });
    expect(stopped.bench?.decision).toBeUndefined();
  });

  it('passes over notes nobody at the bench can have made', () => {
    const [tried] = atTheBench(STORY).tryOns;
    if (!tried) throw new Error('A pair was tried');
    const odd = { ...tried, notes: { heel: 'holds', mood: 'merry', 'task-none': 'good' }, rubs: ['left-ear'] };
    const names = fitters({ tryOns: [odd] }).bench?.tried.rows.map(({ name }) => name);
    expect(names).toEqual(['Box fetched', "Customer's order", 'Size', 'Heel', 'Comfort, 0 to 100']);
  });

  it.each(LANGUAGES)('prints all of it, in every format and as a page to read (%s)', (language) => {
    const text = fitters(atTheBench(STORY), language);
    const wanted = recordOf(text);
    expect(wanted.length).toBeGreaterThan(60);
    const page = plain(
      twinOf(text)
        .replaceAll(/<[^>]+>/g, '')
        .replaceAll('&#39;', "'"),
    );
    expect(wanted.filter((each) => !page.includes(plain(each)))).toEqual([]);
    if (text.direction === 'rtl') return;
    for (const format of SAMPLE_FORMATS) {
      const paper = onPaper(text, format);
      expect(paper.wrong, format).toEqual([]);
      expect(
        wanted.filter((each) => !paper.said.includes(plain(each))),
        format,
      ).toEqual([]);
    }
  });

  it('keeps to two pages of A4 and Letter with all of it', () => {
    const skipper = 'rope-skipper-spring-not-soft';
    const text = fitters(atTheBench(skipper), 'en', skipper);
    for (const format of ['a4', 'letter']) expect(onPaper(text, format).pages, format).toBeLessThanOrEqual(2);
    expect(onPaper(fitters(atTheBench(STORY)), 'a4').pages).toBeLessThanOrEqual(2);
  });

  it.each(LANGUAGES)('says nothing of a record where nothing was recorded (%s)', (language) => {
    const bare = textOf(sampleFacts(STORY, 'fitter', { observation: {} }), sampleWords(language));
    expect(recordOf(bare)).toEqual([]);
    const { bench } = bare;
    if (!bench) throw new Error('A fitter’s copy has a bench');
    const headings = [bench.decision, bench.tried, bench.feet, bench.changes].map(({ heading }) => heading);
    const page = twinOf(bare);
    expect(headings.filter((each) => page.includes(`>${each}<`))).toEqual([]);
  });
});

describe('health in the record', () => {
  const overrides = [{ question: 'ankles', value: ['none'], by: 'MK', reason: 'asked-now' }] as const;

  it('is told only where the customer handed it to the fitter', () => {
    const { ankles: _kept, ...answers } = sampleLine(STORY).visit.answers;
    const said = fitters({ answers, hold: 'none', overrides }).bench?.changes.items.map((item) => item.said);
    expect(said).toEqual(['Kept private. Now: They are fine (MK: asked at the bench).']);
  });
});

describe('the customer’s copy', () => {
  it('is the same card whatever was written down of trying on, and holds no record', () => {
    const { tryOns } = atTheBench(STORY);
    const before = sampleFacts(STORY, 'customer');
    expect(sampleFacts(STORY, 'customer', { tryOns })).toEqual(before);
    expect(sampleFacts(STORY, 'customer', { tryOns, choice: { kind: 'none', reason: 'price' } })).toEqual(before);
  });

  it.each(LANGUAGES)('has none of it after a decision (%s)', (language) => {
    const record = atTheBench(STORY);
    const text = textOf(sampleFacts(STORY, 'customer', { ...record, printHealth: true }), sampleWords(language));
    expect(text.bench).toBeUndefined();
    const page = plain(twinOf(text).replaceAll(/<[^>]+>/g, ' '));
    const own = recordOf(fitters(record, language));
    const { bench } = fitters(record, language);
    const theirs = [
      bench?.tried.heading,
      bench?.changes.heading,
      ...(bench?.changes.items ?? []).map(({ said }) => said),
    ];
    expect(own.length).toBeGreaterThan(theirs.length);
    expect(theirs.filter((each) => page.includes(`${plain(each ?? '')}`))).toEqual([]);
  });
});

it('every print template has the blocks of the record', () => {
  const record = BLOCKS.filter((id) => ['decision', 'try-ons', 'measures', 'changes'].includes(id));
  expect(record).toHaveLength(4);
  for (const format of SAMPLE_FORMATS) {
    const blocks = toyTemplate(format).sides.flatMap((side) => side.blocks.map((row) => row.block));
    expect(
      record.filter((id) => !blocks.includes(id)),
      format,
    ).toEqual([]);
  }
});
