import { expect, it } from 'vitest';
import { whyOf } from '../../src/profile/why.ts';
import { TOY } from './toy-knowledge.ts';
import { profileOfAnswers } from './toy-visit.ts';

it('every line of a profile comes with its chain from answer to source', () => {
  const profile = profileOfAnswers({
    activity: 'rope-skipping',
    signs: ['none'],
    conditions: ['none'],
    'place-rules': ['non-marking'],
  });
  const chain = whyOf(profile, TOY);
  expect(chain.find((why) => why.about === 'cushion')?.links[0]).toMatchObject({
    from: 'activity',
    said: 'rope-skipping',
    known: 'computed',
  });
  expect(chain.filter((why) => why.kind === 'need')).toHaveLength(profile.needs.length);
  expect(chain.find((why) => why.kind === 'must')).toMatchObject({ about: 'non-marking', value: true });
  for (const why of chain) if (why.kind === 'need' || why.kind === 'must') expect(why.links.length).toBeGreaterThan(0);
});
