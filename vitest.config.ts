import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    // Browsers and spreadsheet programs share the machine with everything else: one more try before it is a failure.
    retry: process.env['CI'] === undefined ? 0 : 1,
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/seed.ts'],
    testTimeout: 60_000,
    pool: 'threads',
  },
});
