import { defineConfig, devices } from '@playwright/test'
import { launchOptions } from './scripts/browser/launch.ts'

export default defineConfig({
  testDir: 'tests/site',
  outputDir: 'test-results',
  fullyParallel: true,
  workers: 2,
  // A test that fails now and then is a fault to be found, not to be tried again.
  retries: 0,
  forbidOnly: Boolean(process.env.CI),
  reporter: 'list',
  timeout: 60_000,
  use: {
    ...devices['Desktop Chrome'],
    viewport: { width: 1280, height: 900 },
    launchOptions: launchOptions(),
    // Recording every test doubles its time: `TRACE=1 npx playwright test …` records the one that fails.
    trace: process.env.TRACE ? 'retain-on-failure' : 'off',
  },
})
