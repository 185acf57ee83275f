import { defineConfig } from '@playwright/test';
import { browserArguments, findBrowser } from './browser.ts';

export default defineConfig({
  testDir: 'screens',
  // Playwright empties its folder; the other results stand beside it.
  outputDir: '../test-results/screens',
  fullyParallel: true,
  workers: 2,
  timeout: 180_000,
  // A crowded machine may keep a key waiting past a prompt; what passes only at the second try is named at the end.
  retries: process.env.CI ? 1 : 0,
  reporter: [['list'], ['json', { outputFile: '../test-results/browser.json' }]],
  use: {
    // The window of a worker is kept from test to test, its cookies and storage are not: a third of the time saved.
    reuseContext: true,
    viewport: { width: 1280, height: 800 },
    launchOptions: { executablePath: findBrowser(), args: browserArguments },
  },
});
