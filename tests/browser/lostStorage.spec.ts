import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { startBrowser } from '../kill/browserProcess';
import { tearRecord } from '../kill/tornRecord';
import { nursery } from './nursery';
import { csvFile, fieldOf } from './page';

let profile = '';
test.beforeEach(() => {
  profile = mkdtempSync(join(tmpdir(), 'lost-'));
});
test.afterEach(() => rmSync(profile, { recursive: true, force: true, maxRetries: 5 }));

/** Does something with the program in a browser that is then killed. */
async function session(address: string, act: (page: Page) => Promise<void>): Promise<void> {
  const browser = await startBrowser(profile);
  try {
    const page = await browser.context.newPage();
    await page.goto(address);
    await page.getByRole('heading', { name: 'Numbers', exact: true }).waitFor({ state: 'attached' });
    await act(page);
  } finally {
    await browser.kill();
  }
}

async function typeWage(page: Page, wage: string): Promise<void> {
  await fieldOf(page, 'Wage').fill(wage);
  await page.getByText(/^Kept on this machine at/).waitFor();
  // A copy is made at most half a second later, and takes a moment.
  await page.waitForTimeout(1500);
}

test('models that the browser loses after a kill are back from their second copies', async ({ baseURL }) => {
  test.setTimeout(180_000);
  const address = baseURL ?? '';
  await session(address, async (page) => {
    for (const name of ['first.csv', 'second.csv']) {
      await page.locator('input[type=file]').first().setInputFiles(csvFile(name, nursery));
      await page.getByRole('status').getByText(`${name} is open.`).waitFor();
      await typeWage(page, '17');
    }
  });
  tearRecord(profile);
  await session(address, async (page) => {
    await expect(fieldOf(page, 'Wage')).toHaveValue('17');
    await typeWage(page, '18');
  });
  await session(address, async (page) => {
    await expect(page.getByRole('status').getByText('Your 2 models are back from their second copies')).toBeVisible();
    await expect(fieldOf(page, 'Wage')).toHaveValue('18');
    await typeWage(page, '19');
  });
  await session(address, async (page) => {
    await expect(fieldOf(page, 'Wage')).toHaveValue('19');
    await expect(page.getByText('back from their second copies')).toHaveCount(0);
  });
});
