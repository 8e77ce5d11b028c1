import { defineConfig } from '@playwright/test';

import { CHROMIUM, GOLDENS } from './places';

/** A phone of common size, held upright. */
const PHONE = { width: 390, height: 844 };

export default defineConfig({
  testDir: '.',
  outputDir: 'results',
  snapshotPathTemplate: `${GOLDENS}/{arg}{ext}`,
  fullyParallel: true,
  // One more than there are processors: a check waits, as a finger does, for a third of its time.
  workers: 3,
  // A check that passes at the second try only has not passed.
  retries: 0,
  timeout: 120_000,
  forbidOnly: true,
  // Pictures are kept only by the script that says so, after somebody has looked at them.
  updateSnapshots: 'none',
  reporter: [['list'], ['html', { outputFolder: 'report', open: 'never' }]],
  expect: {
    timeout: 10_000,
    toHaveScreenshot: {
      animations: 'disabled',
      caret: 'hide',
      stylePath: './goldens.css',
      scale: 'css',
      // The edges of letters differ a little from one build of the browser to the next.
      threshold: 0.2,
      maxDiffPixelRatio: 0.01,
    },
  },
  use: {
    viewport: PHONE,
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 1,
    locale: 'en-GB',
    actionTimeout: 10_000,
    timezoneId: 'UTC',
    trace: 'off',
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: CHROMIUM,
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        // Nothing but this machine can be reached, whatever a screen may try.
        '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
      ],
    },
  },
});
