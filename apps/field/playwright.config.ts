import { existsSync } from 'node:fs'
import { defineConfig, devices } from '@playwright/test'

/** Another one where several checkouts are tested on one machine at a time. */
const PORT = Number(process.env.FIELD_PORT ?? 4183)

/** The browser that was named, else the one of the system, else Playwright's own. */
const executablePath = [process.env.CHROMIUM, '/usr/bin/chromium'].find((path) => path && existsSync(path))

export default defineConfig({
  testDir: 'test',
  outputDir: 'test-results',
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  reporter: [['list']],
  timeout: 60_000,
  // A crowded machine can be late; what passes only at the second try is told as flaky.
  retries: 1,
  expect: { timeout: 10_000 },
  use: {
    ...devices['Desktop Chrome'],
    baseURL: `http://localhost:${PORT}/`,
    // To record one costs as much as the page itself, so it is done at the second try.
    trace: 'on-first-retry',
    // To store the app for work without a network is a third of a start. The tests of that work allow it.
    serviceWorkers: 'block',
    launchOptions: {
      ...(executablePath && { executablePath }),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: `npm run build && npm run preview -- --port ${PORT} --strictPort`,
    port: PORT,
    reuseExistingServer: false,
    timeout: 120_000,
  },
})
