import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** Tests that drive a page in a browser: after all others, since a page that gets no time to draw shows nothing. */
const pages = ['tests/bench-page/**/*.test.ts', 'tests/pane/**/*.test.ts'];

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
          exclude: pages,
          // Many of them wait for another program, so that two side by side suit even one core.
          maxWorkers: Math.max(2, availableParallelism() - 1),
          sequence: { groupOrder: 0 },
        },
      },
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
