import type { Visit } from '../../../src/visit/visit.ts';

/** An invented visit with one answer. */
export const visit: Visit = {
  flow: 'toy',
  flowVersion: 1,
  language: 'en',
  answers: { floor: 'tiles' },
  overrides: [],
  observation: {},
  tryOns: [],
};
