// Opens large files in the built site and prints how long each takes, and for how long the page does not answer
// meanwhile: the tasks of more than 50 ms (W3C, Long Tasks API).
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser, type Page } from '@playwright/test';
import { build, preview } from 'vite';
import { findBrowser } from '../browser/findBrowser';
import { largeModels, manyBatches, type LargeFile } from './largeFiles';

const folder = mkdtempSync(join(tmpdir(), 'opening-'));

/** Milliseconds of each long task so far, which are then forgotten. */
async function longTasks(page: Page): Promise<number[]> {
  return page.evaluate(() => (globalThis as unknown as { longTasks: number[] }).longTasks.splice(0));
}

async function openedPage(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage({ locale: 'en-GB', viewport: { width: 1440, height: 900 } });
  await page.addInitScript(() => {
    const found: number[] = [];
    Object.assign(globalThis, { longTasks: found });
    const watcher = new PerformanceObserver((list) => found.push(...list.getEntries().map(({ duration }) => duration)));
    watcher.observe({ type: 'longtask' });
  });
  await page.goto(address);
  await page.waitForLoadState('networkidle');
  return page;
}

/** Opens a file with a button, and waits until what it shows or why it is refused stands on the page. */
async function timeOpening(page: Page, { name, text }: LargeFile, button: string, shown: string): Promise<void> {
  // From a disk: what is handed over as bytes would be a long task by itself.
  const path = join(folder, 'large.csv');
  writeFileSync(path, text);
  await longTasks(page);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: button, exact: true }).click();
  const since = performance.now();
  await (await chooser).setFiles(path);
  await page.locator(`${shown}, [role=alert]:not(:empty)`).first().waitFor({ timeout: 120_000 });
  const took = Math.round(performance.now() - since);
  await page.waitForTimeout(2000);
  const tasks = (await longTasks(page)).map(Math.round);
  const said = tasks.length === 0 ? 'no long task' : `long tasks: ${tasks.length}, at most ${Math.max(...tasks)} ms`;
  console.log(`${name}: ${took} ms, ${said}`);
}

await build({ logLevel: 'error' });
const server = await preview({ preview: { host: '127.0.0.1', port: 0 }, logLevel: 'error' });
const executablePath = findBrowser();
const browser = await chromium.launch(executablePath === undefined ? {} : { executablePath });
try {
  const address = server.resolvedUrls!.local[0]!;
  console.log(`\nLarge files, Chromium ${browser.version()}`);
  for (const file of largeModels) {
    const page = await openedPage(browser, address);
    await timeOpening(page, file, 'Open a file', 'h1:has-text("large.csv")');
    await page.close();
  }
  const page = await openedPage(browser, address);
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'Timing' }).click();
  await page.waitForLoadState('networkidle');
  await timeOpening(page, manyBatches, 'Open trials (CSV)', '.batches input');
} finally {
  await browser.close();
  await server.close();
  rmSync(folder, { recursive: true });
}
