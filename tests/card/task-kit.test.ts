import { describe, expect, it, test } from 'vitest';
import type { Copy } from '../../src/card/card.ts';
import type { Shop } from '../../src/card/shop.ts';
import { withKit } from '../../src/card/task-kit.ts';
import { sampleFacts } from './sample-lines.ts';

test('withKit: a shop without a ramp is asked for no walk down one', () => {
  expect(withKit(['walk', 'ramp-down', 'stairs'], ['box'])).toEqual(['walk', 'stairs']);
  expect(withKit(['walk', 'rope-turns', 'treadmill-run'], [])).toEqual(['walk']);
});

describe('the tasks printed on a card', () => {
  const printed = (story: string, kit: Shop['kit'], copy: Copy = 'customer') => {
    const { gentle, moving } = sampleFacts(story, copy, {}, { kit }).tasks;
    return [...gentle, ...moving];
  };

  it('ask for nothing that the shop does not have', () => {
    for (const copy of ['customer', 'fitter'] as const) {
      expect(printed('hill-walker-wet', ['ramp', 'box'], copy)).toEqual(
        expect.arrayContaining(['ramp-down', 'stairs']),
      );
      expect(printed('hill-walker-wet', ['ramp'], copy)).not.toContain('stairs');
      expect(printed('hill-walker-wet', ['box'], copy)).not.toContain('ramp-down');
    }
  });

  it('leave everybody something to try in a shop with a clear floor and nothing else', () => {
    expect(printed('hill-walker-wet', []).length).toBeGreaterThan(0);
  });
});
