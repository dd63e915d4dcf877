import type { Flow } from '../../src/flow/format.ts';
import type { Tables } from '../../src/flow/options.ts';

/** A toy flow with every kind of question, one health question off the main route, and toy tables. Invented. */
export const toyTables: Tables = {
  activities: ['swinging', 'sliding', 'stamping'].map((id) => ({ id, group: 'play' })),
  floors: ['moss', 'ice', 'cork', 'slate', 'felt'].map((id) => ({ id, group: 'odd' })),
  'shoe-kinds': ['clogs', 'slippers'].map((id) => ({ id, group: 'house' })),
};

export const toyFlow: Flow = {
  id: 'toy',
  version: 3,
  languages: ['en', 'de'],
  bounds: { longest: 10, shortWays: [], typical: { story: 'anyone', screens: 10 } },
  sections: [
    {
      id: 'start',
      questions: [
        { id: 'mood', kind: 'one-of', options: [{ id: 'merry' }, { id: 'calm' }, { id: 'tired' }] },
        { id: 'activity', kind: 'one-of', options: { table: 'activities' }, extra: [{ id: 'none' }] },
        { id: 'hours', kind: 'yes-no' },
        {
          id: 'floors',
          kind: 'shares',
          options: { table: 'floors' },
          extra: [{ id: 'not-sure', alone: true }],
          askWhen: { not: { of: 'mood', is: 'tired' } },
        },
      ],
    },
    {
      id: 'middle',
      questions: [
        {
          id: 'size',
          kind: 'number',
          notSure: true,
          units: [
            { id: 'eu', from: 16, to: 52 },
            { id: 'mm', from: 90, to: 330 },
            { id: 'ells', from: 0, to: 1e6 },
          ],
        },
        {
          id: 'signs',
          kind: 'signs',
          health: true,
          options: [{ id: 'sneezing' }, { id: 'hiccups' }, { id: 'none', alone: true }],
        },
        {
          id: 'body',
          kind: 'body-map',
          health: true,
          askWhen: { of: 'signs', includes: 'sneezing' },
          regions: [
            { id: 'nose', view: 'front' },
            { id: 'elbow', view: 'back' },
            { id: 'toe', view: 'foot' },
          ],
        },
      ],
    },
    {
      id: 'end',
      questions: [
        {
          id: 'liking',
          kind: 'against-today',
          properties: [
            { id: 'weight', choices: ['lighter', 'same', 'heavier', 'no-preference'] },
            { id: 'squeak', choices: ['louder', 'same', 'quieter'] },
          ],
        },
        { id: 'matters', kind: 'some-of', most: 2, options: [{ id: 'weight' }, { id: 'squeak' }, { id: 'smell' }] },
      ],
    },
  ],
};
