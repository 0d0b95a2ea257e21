// Two projects: `unit` needs Node alone; `browser` drives a real Chromium from Node (tests/browser/run.mjs).
import { defineConfig } from 'vitest/config';

const oxc = { jsx: { runtime: 'automatic', importSource: 'preact' } } as const;

export default defineConfig({
  cacheDir: '.cache/vite',
  test: {
    allowOnly: false,
    // All cores: left to itself, one of two would stand idle.
    maxWorkers: '100%',
    projects: [
      {
        oxc,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/perf/**'],
          setupFiles: ['tests/seed.ts'],
          testTimeout: 30_000,
        },
      },
      {
        oxc,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/setup.mjs'],
          setupFiles: ['tests/seed.ts'],
          // One page at a time: two busy pages on two cores would disturb each other's clocks.
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // A machine that stalls a page for a quarter of a second voids the run in it, as it should: such a test flies again.
          retry: 1,
          // Waits end with the event they wait for; this only bounds how long a busy machine may take to bring it.
          expect: { poll: { timeout: 15_000, interval: 50 } },
        },
      },
    ],
  },
});
