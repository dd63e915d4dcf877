/**
 * How many cases a law of the whole line is tried on: here a few seconds' worth, always the same ones, so that a red
 * test is about the change at hand. The long run sets LACEWING_RUNS and draws new ones each time.
 */
const runs = process.env['LACEWING_RUNS'];
export const RUNS = runs === undefined ? { numRuns: 30, seed: 20261125 } : { numRuns: Number(runs) };
