import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/screens/**', '**/node_modules/**'],
    setupFiles: ['tests/fast-check.setup.ts'],
    // Every core works, also the one vitest would keep for itself.
    maxWorkers: '100%',
    // No test leaves anything behind in a module, so a worker keeps what it has loaded.
    isolate: false,
    // A crowded machine may keep a process waiting; what passes only at the second try is named at the end. Kill tests have one
    // try: a loss seen once is a loss.
    retry: process.env.CI ? 1 : 0,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
