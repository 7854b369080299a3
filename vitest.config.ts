import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** Tests that drive a page in a browser: after all others, since a page that gets no time to draw shows nothing. */
const pages = ['tests/bench-page/**/*.test.ts', 'tests/pane/**/*.test.ts'];

/** Tests that change what all modules share, or count on nobody having used it, and so load their modules anew. */
const apart = [
  'tests/structure/linearPatterns.test.ts',
  'tests/hosts/excel/operations.test.ts',
  'tests/units/parse.test.ts',
];

/** Many of the tests without a page wait for another program, so that two side by side suit even one core. */
const maxWorkers = Math.max(2, availableParallelism() - 1);

const shared = {
  globalSetup: ['tests/tool.ts'],
  setupFiles: ['tests/seed.ts'],
  testTimeout: 180_000,
  hookTimeout: 120_000,
  pool: 'threads' as const,
};

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          ...shared,
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: [...pages, ...apart],
          // Each worker loads the modules once: loading them for every file takes as long as the tests themselves.
          isolate: false,
          maxWorkers,
          sequence: { groupOrder: 0 },
        },
      },
      { test: { ...shared, name: 'apart', include: apart, maxWorkers, sequence: { groupOrder: 0 } } },
      {
        test: {
          ...shared,
          name: 'pages',
          globalSetup: [...shared.globalSetup, 'tests/builtOnce.ts'],
          include: pages,
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
          // A second, as is usual, is little for a page beside another one.
          expect: { poll: { timeout: 10_000 } },
        },
      },
    ],
  },
});
