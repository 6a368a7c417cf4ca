import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { screenQuestions } from '../../src/present/page/questions';
import { shippedModelTexts } from '../../src/present/page/shippedModelTexts';
import { fieldOf, labelOf } from './page';
import { expect as usual, test as quiet } from './quietPage';
import { buildLater, openSite, type Site } from './siteServer';

const built = join(import.meta.dirname, '../../dist');

/** What is loaded from the disk anew may take longer than what stands on the page. */
const expect = usual.configure({ timeout: 20_000 });

const test = quiet.extend<{ site: Site; folder: string }>({
  // Playwright reads what a fixture needs from the braces.
  folder: async ({}, use) => {
    const folder = mkdtempSync(join(tmpdir(), 'site-'));
    await use(folder);
    rmSync(folder, { recursive: true });
  },
  site: async ({}, use) => {
    const site = await openSite(built);
    await use(site);
    await site.close();
  },
  baseURL: async ({ site }, use) => use(site.address),
});
test.use({ serviceWorkers: 'allow' });

/** The first visit, until the whole site is on this machine. */
async function visit(page: Page): Promise<void> {
  await page.goto('./');
  await expect(fieldOf(page, 'Wage')).toBeVisible();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

async function ask(page: Page, question: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: question }).click();
}

/** Asks each question and brings each section of its screen into sight, so that all of its parts are loaded. */
async function useEveryScreen(page: Page): Promise<void> {
  for (const { key, label } of screenQuestions.filter((one) => one.key !== 'numbers')) {
    await ask(page, label);
    await expect(page.getByRole('region', { name: label, exact: true }), key).toBeVisible();
    for (const part of await page.locator('.side-half section.part').all()) await part.scrollIntoViewIfNeeded();
    await expect(page.locator('.side-half').getByText(/^(?:One moment|Drawing)/), key).toHaveCount(0);
  }
  await page.getByRole('button', { name: 'How everything is worked out' }).click();
  await expect(page.getByRole('heading', { name: 'How it is worked out' })).toBeVisible();
}

async function openEachModel(page: Page): Promise<void> {
  for (const { question } of Object.values(shippedModelTexts)) {
    await page.locator('summary', { hasText: /^Models$/ }).click();
    await page.getByRole('button', { name: question }).click();
    await expect(page.getByText(`${question} is open.`)).toBeVisible();
  }
}

async function timeABatch(page: Page): Promise<void> {
  await ask(page, 'Timing');
  const screen = page.getByRole('region', { name: 'Timing', exact: true });
  await screen.getByRole('combobox', { name: 'Step' }).fill('lifting');
  await screen.getByRole('button', { name: 'Start the watch' }).click();
  // A batch of no time at all is none.
  await page.waitForTimeout(300);
  await screen.getByRole('button', { name: 'Stop' }).click();
  await page.keyboard.type('10');
  await page.keyboard.press('Enter');
  await expect(screen.locator('.said')).toContainText(/^Lifting took .+ in one batch/);
}

test('after the first visit everything works without a network, also after a reload', async ({
  page,
  context,
  site,
}) => {
  // Every screen is computed once; a busy machine takes several times as long.
  test.setTimeout(180_000);
  await visit(page);
  site.turnOff();
  await context.setOffline(true);
  await useEveryScreen(page);
  await openEachModel(page);
  await page.reload();
  await timeABatch(page);
  const input = page.locator('.entry').getByRole('textbox').first();
  await input.fill('7.25');
  await page.reload();
  await expect(input).toHaveValue('7.25');
  await expect(page.getByRole('region', { name: 'Timing', exact: true }).locator('.said')).toContainText('one batch');
});

test('a new version is announced, taken over when asked, and the work stands', async ({ page, site, folder }) => {
  await visit(page);
  await fieldOf(page, 'Wage').fill('17.25');
  buildLater(built, folder);
  site.serve(folder);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  const notice = page.getByRole('status').filter({ hasText: 'A new version of Raftmargin is ready' });
  await expect(notice).toBeVisible();
  // Until then the page has all parts of its own version, though the host has none of them.
  await ask(page, 'Beds');
  await expect(page.getByRole('region', { name: 'Beds', exact: true })).toBeVisible();
  await labelOf(page, 'Margin').click();
  await expect(page.locator('html')).not.toHaveAttribute('data-build');
  await fieldOf(page, 'Wage').fill('17.5');
  await notice.getByRole('button', { name: 'Use it now' }).click();
  await expect(page.locator('html')).toHaveAttribute('data-build', 'later');
  await expect(fieldOf(page, 'Wage')).toHaveValue('17.5');
  await expect(notice).toHaveCount(0);
  expect(site.missing()).toEqual([]);
});

test('a window that another one left behind says so, and so does one that lacks a part', async ({
  page,
  context,
  site,
  folder,
  complaints,
}) => {
  await visit(page);
  const other = await context.newPage();
  await visit(other);
  buildLater(built, folder);
  site.serve(folder);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await page.getByRole('button', { name: 'Use it now' }).click();
  await expect(other.getByText('Another window has gone over to a new version')).toBeVisible();
  await ask(other, 'Beds');
  await expect(other.getByText('A part of the program could not be loaded')).toBeVisible();
  await other.getByRole('status').getByRole('button', { name: 'Load the page again' }).click();
  await expect(other.locator('html')).toHaveAttribute('data-build', 'later');
  await expect(other.getByRole('region', { name: 'Beds', exact: true })).toBeVisible();
  expect([...complaints]).toEqual([]);
});
