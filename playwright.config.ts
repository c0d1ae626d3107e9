import { defineConfig } from '@playwright/test';

const port = 4325;

/** Debian's Chromium, found by its path; nothing is downloaded. */
export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results',
  fullyParallel: true,
  workers: 2,
  retries: process.env['CI'] ? 1 : 0,
  forbidOnly: true,
  timeout: 90_000,
  expect: { timeout: 15_000 },
  reporter: 'list',
  use: {
    baseURL: `http://localhost:${port}`,
    browserName: 'chromium',
    serviceWorkers: 'block',
    launchOptions: {
      executablePath: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
      args: [
        '--headless',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  projects: [
    {
      name: 'desktop',
      testIgnore: '**/translated.spec.ts',
      use: { viewport: { width: 1280, height: 800 } },
    },
    {
      name: 'phone',
      testIgnore: '**/{offline,search}.spec.ts',
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    },
  ],
  webServer: {
    command: `tsx site/scripts/serve.ts site/dist ${port}`,
    url: `http://localhost:${port}/`,
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
