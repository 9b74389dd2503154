import { defineConfig } from '@playwright/test';
import { browserOptions, given, OTHERS, OUT, SHAPES } from './support/settings.ts';

/** Whole games, minutes each. */
const LONG = /(soak|whole-game)\.spec/;

// `cargo xtask test` starts a server for dist/ and passes its address and the browser.
export default defineConfig({
  testDir: 'specs',
  outputDir: `${OUT}/results`,
  // One for every system: nothing in them depends on it.
  snapshotPathTemplate: 'snapshots/{arg}{ext}',
  timeout: 60_000,
  expect: { timeout: 10_000 },
  // What only measures, and long, is for `cargo xtask figures`.
  ...(process.env.BENCHBOOK_FIGURES ? {} : { grepInvert: /@figures/ }),
  // A test that passes only now and then is a failing test.
  retries: 0,
  // Figures are of a browser that has the machine for itself.
  workers: process.env.BENCHBOOK_FIGURES ? 1 : 2,
  fullyParallel: true,
  forbidOnly: Boolean(process.env.CI),
  reporter: [['list'], ['json', { outputFile: process.env.BENCHBOOK_REPORT ?? `${OUT}/report.json` }]],
  use: {
    baseURL: given('BASE_URL'),
    hasTouch: true,
    screenshot: 'only-on-failure',
    trace: 'retain-on-failure',
    launchOptions: browserOptions(),
  },
  projects: [
    // The longest begin first, or one worker would wait for them at the end.
    { name: 'long', testMatch: LONG, use: { viewport: SHAPES.tablet } },
    // With `--browsers all`.
    ...OTHERS.map((name) => ({ name, testDir: 'others' })),
    { name: 'tablet', testIgnore: LONG, use: { viewport: SHAPES.tablet } },
    // The other shapes run what is about shape: tag a test @shapes to have it run on all.
    { name: 'landscape', grep: /@shapes/, use: { viewport: SHAPES.landscape } },
    { name: 'phone', grep: /@shapes/, use: { viewport: SHAPES.phone } },
  ],
});
