import { defineConfig } from 'vitest/config';

/** The long ones: fuzz that takes minutes, and the laws of the whole line on new cases, thousands of them. */
export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/soak/**/*.test.ts', 'tests/laws/line*.test.ts'],
    env: { LACEWING_RUNS: process.env['LACEWING_RUNS'] ?? '3000' },
    testTimeout: 3_600_000,
  },
});
