import { createServer, type AddressInfo } from 'node:net';
import { defineConfig } from '@playwright/test';
import { findBrowser } from './tests/browser/findBrowser';

/** A port that nobody listens on, so that two runs on one machine do not meet. */
async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const { port } = server.address() as AddressInfo;
  await new Promise((closed) => server.close(closed));
  return port;
}

// Playwright reads this file once more in each worker: all must see the same port.
const port = (process.env['BROWSER_TEST_PORT'] ??= String(await freePort()));
const address = `http://127.0.0.1:${port}`;
const executablePath = findBrowser();

const speed = '**/speed.spec.ts';
const kill = '**/kill.spec.ts';

export default defineConfig({
  testDir: 'tests/browser',
  outputDir: '.cache/browser',
  forbidOnly: true,
  workers: 2,
  // Room for a slow machine: a test that says nothing of speed is not to fail by it.
  timeout: 90_000,
  expect: { timeout: 15_000 },
  projects: [
    { name: 'screens', testIgnore: [speed, kill] },
    // What is timed has the machine to itself.
    { name: 'speed', testMatch: speed, dependencies: ['screens'] },
    { name: 'kill', testMatch: kill, dependencies: ['speed'] },
  ],
  reporter: [['list'], ['json', { outputFile: '.cache/reports/browser.json' }]],
  use: {
    baseURL: address,
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    screenshot: 'only-on-failure',
    // A worker would answer for the server; offline.spec.ts alone lets it.
    serviceWorkers: 'block',
    launchOptions: {
      ...(executablePath !== undefined && { executablePath }),
      // Quiet where the machine has no network.
      args: ['--disable-background-networking', '--disable-component-update', '--disable-sync', '--no-first-run'],
    },
  },
  webServer: {
    command: `npx vite preview --host 127.0.0.1 --port ${port} --strictPort`,
    url: address,
  },
});
