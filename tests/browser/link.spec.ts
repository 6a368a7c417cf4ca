import { csvFile, chooseFile, fieldOf, headlineOf, openApp } from './page';
import { expect, test } from './quietPage';
import type { Page } from '@playwright/test';

const small =
  'name,formula,unit,label,role\nprice,0.8,EUR,Price,\nheads,1000,1,Heads,\nsales,price * heads,EUR,Sales,headline\n';

test.use({ permissions: ['clipboard-read', 'clipboard-write'] });

async function copiedLink(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Copy a link' }).click();
  await expect(page.getByText('A link is copied. It holds the whole model')).toBeVisible();
  return page.evaluate(() => navigator.clipboard.readText());
}

/** Enters an address as a person does in an open page. */
async function enter(page: Page, address: string): Promise<void> {
  await page.evaluate((to) => {
    location.href = to;
  }, address);
}

test.beforeEach(async ({ page }) => openApp(page));

test('a link opens the model with its changed numbers, and the page loaded again brings the work, not the link', async ({
  page,
  browser,
}) => {
  await chooseFile(page, csvFile('small.csv', small));
  await fieldOf(page, 'Price').fill('0.95');
  const link = await copiedLink(page);
  expect(new URL(link).origin).toBe(new URL(page.url()).origin);

  // Somebody else's browser.
  const other = await browser.newPage();
  await other.goto(link);
  await expect(other.getByText('small.csv is open.')).toBeVisible();
  await expect(fieldOf(other, 'Price')).toHaveValue('0.95');
  await expect(headlineOf(other, 'Sales')).toContainText('950');
  expect(new URL(other.url()).hash).toBe('');
  await fieldOf(other, 'Price').fill('1');
  await other.reload();
  await expect(fieldOf(other, 'Price')).toHaveValue('1');
  await other.close();
});

test('a link entered in an open page is followed', async ({ page }) => {
  const link = await copiedLink(page);
  const title = await page.getByRole('heading', { level: 1 }).textContent();
  await chooseFile(page, csvFile('small.csv', small));
  await expect(fieldOf(page, 'Price')).toBeVisible();
  await enter(page, link);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title ?? '');
  await page.getByRole('button', { name: 'Undo it' }).click();
  await expect(fieldOf(page, 'Price')).toHaveValue('0.8');
});

test('a link entered after a walk through the questions is followed', async ({ page }) => {
  const link = await copiedLink(page);
  await chooseFile(page, csvFile('small.csv', small));
  await page.getByRole('button', { name: 'Breakeven', exact: true }).click();
  // From here on the browser's history has places of the program.
  await expect.poll(() => page.evaluate(() => history.state !== null)).toBe(true);
  await fieldOf(page, 'Price').fill('0.9');
  await enter(page, link);
  await expect(page.getByText('transplant-hire.csv is open.')).toBeVisible();
  expect(new URL(page.url()).hash).not.toContain('model');
});

test('where nothing can be kept, a link asks before it takes the place of changed numbers', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('storage is switched off', 'SecurityError');
    };
  });
  await openApp(page);
  const link = await copiedLink(page);
  await chooseFile(page, csvFile('small.csv', small));
  await fieldOf(page, 'Price').fill('0.9');
  await enter(page, link);
  await expect(page.getByText('which the link holds, takes the place of small.csv')).toBeVisible();
  await page.getByRole('button', { name: 'Keep mine' }).click();
  await expect(page.getByText('which the link holds, takes the place of small.csv')).toHaveCount(0);
  await expect(fieldOf(page, 'Price')).toHaveValue('0.9');
  await enter(page, link);
  await page.getByRole('button', { name: 'Open it' }).click();
  await expect(page.getByText('transplant-hire.csv is open.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo it' }).click();
  await expect(fieldOf(page, 'Price')).toHaveValue('0.9');
});

test('a damaged link says so, and the model open before stays', async ({ page }) => {
  await chooseFile(page, csvFile('small.csv', small));
  const link = await copiedLink(page);
  await fieldOf(page, 'Price').fill('0.9');
  await enter(page, link.slice(0, -8));
  await expect(page.getByRole('heading', { name: 'The link was not opened' })).toBeVisible();
  await expect(page.getByRole('alert')).toContainText('damaged link');
  await expect(fieldOf(page, 'Price')).toHaveValue('0.9');
});

test('without the clipboard the link stands in the address', async ({ page, context }) => {
  await page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new Error('not allowed'));
  });
  await page.getByRole('button', { name: 'Copy a link' }).click();
  await expect(page.getByText('The link stands in this page’s address')).toBeVisible();
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(other.getByText('transplant-hire.csv is open.')).toBeVisible();
});

test('a text that is not valid stays out of the link, and that is said', async ({ page }) => {
  await chooseFile(page, csvFile('small.csv', small));
  await fieldOf(page, 'Price').fill('0.8 or so');
  await page.getByRole('button', { name: 'Copy a link' }).click();
  await expect(page.getByText('one text that is not valid yet stays out of it')).toBeVisible();
});
