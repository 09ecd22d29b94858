import { defineConfig } from 'vitest/config';

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    setupFiles: ['tests/setup.ts'],
    // The laws take a minute on a machine of their own, and much longer on a busy one.
    testTimeout: 600_000,
    pool: 'forks',
    maxWorkers: '100%',
    // Nothing under test keeps state between files, and reading the whole program for each of them took half of the time.
    isolate: false,
  },
});
