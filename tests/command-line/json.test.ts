import { describe, expect, it } from 'vitest';
import { command, NURSE, STOCK, STORY } from './running.ts';

const json = async (...args: readonly string[]) => {
  const { code, out } = await command(...args, '--json');
  expect(code).toBe(0);
  return JSON.parse(out);
};
/** More keys may come; these stay. */
const has = (value: object, keys: readonly string[]) =>
  expect(Object.keys(value)).toEqual(expect.arrayContaining([...keys]));

describe('--json prints one object with the keys that scripts rely on', () => {
  it('size', async () => {
    const size = await json('size', '--left', '262', '--right', '265');
    has(size, ['footLength', 'mondopoint', 'eu', 'uk', 'usMen', 'usWomen', 'toeRoom', 'innerLength', 'findings']);
    expect(size).toMatchObject({
      footLength: 265,
      mondopoint: '265',
      eu: '42',
      uk: '8.5',
      usMen: '9.5',
      usWomen: '10.5',
      toeRoom: [10, 15],
      innerLength: [275, 280],
    });
  });

  it('profile', async () => {
    const profile = await json('profile', NURSE);
    has(profile, ['outcome', 'hold', 'needs', 'musts', 'cautions', 'unknown']);
    expect(profile).toMatchObject({ outcome: 'shortlist', hold: 'none' });
    for (const need of profile.needs) has(need, ['attribute', 'unit', 'ideal', 'limits', 'importance', 'reasons']);
    for (const { reasons } of profile.needs)
      for (const reason of reasons) has(reason, ['from', 'rule', 'source', 'grade']);
    for (const must of profile.musts) has(must, ['attribute', 'value', 'reasons']);
    for (const caution of profile.cautions) {
      has(caution, ['code', 'level', 'source']);
      expect(['now', 'today', 'before-choosing', 'mind', 'upkeep']).toContain(caution.level);
    }
  });

  it('shortlist', async () => {
    const shortlist = await json('shortlist', STORY, '--stock', STOCK);
    has(shortlist, ['outcome', 'lineUps', 'removed', 'cautions']);
    for (const lineUp of shortlist.lineUps) {
      has(lineUp, ['for', 'entries']);
      expect(lineUp.entries.length).toBeGreaterThan(0);
      for (const entry of lineUp.entries) {
        has(entry, ['shoe', 'place', 'part', 'boxes', 'reasons', 'misgivings', 'easeIn', 'unknown']);
        for (const box of entry.boxes) has(box, ['id', 'labels', 'shelf']);
        for (const reason of entry.reasons) has(reason, ['code', 'attribute', 'from']);
      }
    }
    for (const gone of shortlist.removed) has(gone, ['must', 'count']);
    for (const caution of shortlist.cautions) has(caution, ['code', 'level', 'source']);
  });

  it('stock', async () => {
    const stock = await json('stock', STOCK);
    has(stock, ['loaded', 'refused', 'findings']);
    expect(stock.loaded).toBeGreaterThan(1000);
    expect(stock.refused).toBe(0);
  });

  it('check', async () => {
    const check = await json('check');
    has(check, ['findings', 'routes', 'answerPaths', 'shortest', 'longest']);
    expect(check.findings.filter(({ severity }: { severity: string }) => severity === 'error')).toEqual([]);
    expect(check.answerPaths).toMatch(/^\d+$/);
    expect(check.longest).toBeLessThanOrEqual(32);
  });
});

describe('said in words', () => {
  it('profile says the same as its object, and why with --why', async () => {
    const object = await json('profile', NURSE);
    const short = (await command('profile', NURSE)).out;
    expect(short).toContain(`outcome ${object.outcome}, hold ${object.hold}`);
    for (const { code, level } of object.cautions) expect(short).toContain(`caution ${level} ${code}`);
    const why = (await command('profile', NURSE, '--why')).out;
    for (const { reasons } of object.needs) for (const { rule } of reasons) expect(why).toContain(` by ${rule} [`);
  });

  it('shortlist names the first pair and its shelf', async () => {
    const object = await json('shortlist', NURSE, '--stock', STOCK);
    const { out } = await command('shortlist', NURSE, '--stock', STOCK);
    const [first] = object.lineUps[0].entries;
    expect(out).toContain(`on shelf ${first.boxes[0].shelf}`);
    expect(out.match(/^ {2}1\. /gm)).toHaveLength(object.lineUps.length);
  });

  it('check counts with --paths', async () => {
    const object = await json('check');
    const { out } = await command('check', '--paths');
    expect(out).toContain(`routes ${object.routes}\nanswer paths ${object.answerPaths}\n`);
  });
});
