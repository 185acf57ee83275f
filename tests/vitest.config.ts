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
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
