import { readFileSync, writeFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { HtmlValidate } from 'html-validate';
import type { Locator, Page, TestInfo } from '@playwright/test';
import { chooseFile, openApp, savedFile } from './page';
import { expect, test } from './quietPage';

const hire = readFileSync(new URL('../../models/transplant-hire.csv', import.meta.url));

/** The live page of the shipped model, made in the app once for all that look at it. */
let html = '';

test.beforeAll(async ({ browser }, info) => {
  const page = await browser.newPage({ baseURL: info.project.use.baseURL!, locale: 'en-GB', serviceWorkers: 'block' });
  await openApp(page);
  await page.getByRole('button', { name: 'The case', exact: true }).click();
  await page.getByLabel('In your own words').fill('One more pair of hands, from March.');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a live page' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe('transplant-hire.html');
  html = readFileSync(await file.path(), 'utf8');
  await expect(page.getByRole('status').filter({ hasText: 'Saved as transplant-hire.html' })).toBeVisible();
  await page.close();
});

/** Opens a live page from disk, without a network. */
async function openLive(page: Page, info: TestInfo, text = html, name = 'case.html'): Promise<void> {
  const path = info.outputPath(name);
  writeFileSync(path, text);
  await page.context().setOffline(true);
  await page.goto(`file://${path}`);
}

/** Draws take turns with the page, and longer on a busy machine. */
const patience = { timeout: 30_000 };

function numberRow(page: Page, label: string): Locator {
  return page.locator('.entry').filter({ has: page.getByText(label, { exact: true }) });
}

async function downloaded(page: Page, press: Locator): Promise<{ name: string; bytes: Buffer }> {
  const download = page.waitForEvent('download');
  await press.click();
  const file = await download;
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

test('the case is saved as one file that works from disk, without a network, and gives its model back', async ({
  page,
}, info) => {
  expect(Buffer.byteLength(html)).toBeLessThanOrEqual(600_000);
  await openLive(page, info);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Does it pay to hire a transplanter?');
  await expect(page.locator('.finding')).toContainText('adds 3,840 EUR a year');
  await expect(page.getByText('One more pair of hands, from March.')).toBeVisible();
  await expect(page.locator('.verdict')).toContainText('of 100 draws', patience);
  // Nothing of the page leads to a question that it does not have.
  await expect(page.getByText('How this is computed')).toHaveCount(0);
  const saved = await downloaded(page, page.getByRole('button', { name: 'Save the model (CSV)' }));
  expect(saved.name).toBe('transplant-hire.csv');
  expect(saved.bytes.equals(hire)).toBe(true);
});

test('whoever reads it moves a number, sees all of it anew, and puts it back', async ({ page }, info) => {
  await openLive(page, info);
  const wage = numberRow(page, 'Wage');
  const field = wage.getByRole('textbox');
  const before = await field.inputValue();
  await field.fill('3o');
  await expect(wage.getByText(`${before} stands.`)).toBeVisible();
  await field.fill('40');
  await expect(page.locator('.finding')).toContainText('loses');
  // Odds are drawn from the sender's range until it is moved to the number.
  await wage.getByRole('button', { name: /^Make it .* to .*/ }).click();
  await expect(page.locator('.verdict')).toContainText('It does not pay: it would in', patience);
  await expect(page.getByText('One number is yours, not the sender’s.')).toBeVisible();
  await expect(wage).toContainText(`sent: ${before}`);
  const saved = await downloaded(page, page.getByRole('button', { name: 'Save the model (CSV)' }));
  expect(saved.bytes.equals(hire)).toBe(false);
  expect(saved.bytes.toString()).toMatch(/entered \d+ \w+ \d{4}/);
  await wage.getByRole('button', { name: 'Put back Wage' }).click();
  await expect(page.locator('.finding')).toContainText('adds 3,840 EUR a year');
  await expect(page.getByText('The numbers are as they were sent.')).toBeVisible();
});

test('what a reader goes to stays where it is', async ({ page }, info) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openLive(page, info);
  await expect(page.locator('.verdict')).toContainText('of 100 draws', patience);
  const save = page.getByRole('button', { name: 'Save the model (CSV)' });
  await save.focus();
  // Whatever comes into sight by going there is laid out within a frame or two.
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn, 500))));
  await expect(save).toBeInViewport({ ratio: 1 });
});

test('Raftmargin opens it as it opens the model', async ({ page }) => {
  await openApp(page);
  await chooseFile(page, { name: 'case.html', mimeType: 'text/html', buffer: Buffer.from(html) });
  await expect(page.getByRole('status').filter({ hasText: 'is open' })).toBeVisible();
  const saved = await savedFile(page);
  expect(saved.name).toBe('transplant-hire.csv');
  expect(saved.bytes.equals(hire)).toBe(true);
});

test('its link opens Raftmargin where it was made, with the reader’s numbers', async ({ page, baseURL }, info) => {
  await openLive(page, info);
  const link = page.getByRole('link', { name: 'Open in Raftmargin' });
  await expect(link).toHaveAttribute('href', new RegExp(`^${baseURL ?? ''}/#model=`));
  const sent = (await link.getAttribute('href')) ?? '';
  await numberRow(page, 'Wage').getByRole('textbox').fill('19');
  // The model is packed anew for the link in a moment of its own.
  await expect(link).not.toHaveAttribute('href', sent);
  await expect(link).toHaveAttribute('href', new RegExp(`^${baseURL ?? ''}/#model=`));
  await expect(async () => {
    await page.context().setOffline(false);
    await page.goto((await link.getAttribute('href')) ?? '');
    await expect(page.getByRole('status').filter({ hasText: 'is open' })).toBeVisible();
  }).toPass();
  expect((await savedFile(page)).bytes.toString()).toMatch(/,19,/);
});

test('cut in half or edited by hand it says so, and keeps what can be read', async ({ page, complaints }, info) => {
  const cut = html.slice(0, html.indexOf('id="program"') + 1000);
  await openLive(page, info, cut, 'cut.html');
  await expect(page.locator('.finding')).toContainText('adds 3,840 EUR a year');
  await expect(page.getByText('a part of the file is missing')).toBeVisible();

  const model = /"model":"(.)/;
  const edited = html.replace(model, (_found, letter: string) => `"model":"${letter === 'A' ? 'B' : 'A'}`);
  await openLive(page, info, edited, 'edited.html');
  await expect(page.getByText('changed file: the model in it is not the one that was sent.')).toBeVisible();
  await expect(page.locator('.finding')).toContainText('adds 3,840 EUR a year');

  // A program that is not the one that was sent is not run at all.
  const script = html.replace('DecompressionStream', ' DecompressionStream');
  await openLive(page, info, script, 'script.html');
  await expect(page.getByText('a part of the file is missing')).toBeVisible();
  await expect.poll(() => [...complaints].join()).toContain('script-src');
  complaints.clear();

  await page.context().setOffline(false);
  await openApp(page);
  await chooseFile(page, { name: 'edited.html', mimeType: 'text/html', buffer: Buffer.from(edited) });
  await expect(page.getByText('changed file: the model in it is not the one that was sent.')).toBeVisible();
});

test('its HTML is sound', async () => {
  const report = await new HtmlValidate({
    extends: ['html-validate:standard'],
    // The policy needs its two scripts and its style in the page, and the packed program has no line ends.
    rules: { 'require-sri': 'off', 'no-inline-style': 'off', 'long-title': 'off' },
  }).validateString(html);
  expect(report.results.flatMap(({ messages }) => messages)).toEqual([]);
});

for (const [width, colorScheme] of [
  [1440, 'light'],
  [390, 'dark'],
  [320, 'light'],
] as const) {
  test(`axe finds nothing in it, and nothing is wider than ${width} px, ${colorScheme}`, async ({ page }, info) => {
    await page.setViewportSize({ width, height: 844 });
    await page.emulateMedia({ colorScheme });
    await openLive(page, info);
    await expect(page.locator('.verdict')).toContainText('of 100 draws', patience);
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
}
