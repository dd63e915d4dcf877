import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readStored, STORED_FORMAT, toStored } from '../../src/visit/stored.ts';
import { anyVisit, visitOf } from './any-visit.ts';
import { toyFlow, toyTables } from './toy-flow.ts';

const read = (stored: unknown) => readStored(stored, toyFlow, toyTables);

describe('a stored visit', () => {
  it('comes back whole from plain JSON', () => {
    fc.assert(
      fc.property(anyVisit(toyFlow, toyTables), (visit) => {
        const { value, findings } = read(JSON.parse(JSON.stringify(toStored(visit))));
        expect(value).toEqual(visit);
        expect(findings.filter(({ code }) => code !== 'hours-without-activity')).toEqual([]);
      }),
    );
  });

  it('keeps the answers that still fit a changed flow and says which do not', () => {
    const visit = visitOf(toyFlow, { mood: 'calm', activity: 'juggling', gone: 'yes' }, { flowVersion: 2 });
    const { value, findings } = read(toStored(visit));
    expect(value?.answers).toEqual({ mood: 'calm' });
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ['answer-not-offered', 'note'],
      ['answer-to-no-question', 'note'],
      ['visit-other-version', 'note'],
    ]);
  });

  it('of another format or another flow, or that is no visit, is refused', () => {
    const codes = (stored: unknown) => {
      const { value, findings } = read(stored);
      expect(value).toBeUndefined();
      return findings.map(({ code, severity }) => [code, severity]);
    };
    const visit = visitOf(toyFlow, {});
    expect(codes({ format: STORED_FORMAT + 1, visit })).toEqual([['stored-other-format', 'error']]);
    expect(codes({ format: STORED_FORMAT, visit: { ...visit, flow: 'other' } })).toEqual([
      ['visit-other-flow', 'error'],
    ]);
    expect(codes('x')).toEqual([['stored-not-a-visit', 'error']]);
    expect(codes(null)).toEqual([['stored-not-a-visit', 'error']]);
  });

  it('never makes the kiosk throw, whatever is found in storage', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (found) => {
        read(found);
        read({ format: STORED_FORMAT, visit: found });
      }),
    );
  });
});
