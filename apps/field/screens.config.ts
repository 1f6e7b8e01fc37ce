import { defineConfig, devices } from '@playwright/test'
import app from './playwright.config.ts'

/**
 * Takes every screen of the app into docs/screens, on a phone and on a desk: `npm run screens`, or some of them by name,
 * `npm run screens -- -g keypad`. Needs `pngquant` and `cwebp` (Debian: apt-get install pngquant webp).
 */
export default defineConfig({
  ...app,
  testDir: 'scripts/screens',
  testMatch: '**/screens.ts',
  outputDir: 'test-results/screens',
  retries: 0,
  timeout: 120_000,
  // A picture is worth the wait for it.
  expect: { timeout: 60_000 },
  use: {
    ...app.use,
    trace: 'off',
    serviceWorkers: 'allow',
    locale: 'en-US',
    timezoneId: 'UTC',
    contextOptions: { reducedMotion: 'reduce' },
  },
  projects: [
    {
      name: 'phone',
      use: { viewport: { width: 390, height: 844 }, deviceScaleFactor: 1.5, hasTouch: true, isMobile: true },
    },
    { name: 'desk', use: { ...devices['Desktop Chrome'], viewport: { width: 1280, height: 800 } } },
  ],
})
