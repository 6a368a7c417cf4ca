import { nursery } from './nursery';
import { chooseFile, csvFile, fieldOf, headlineOf, openApp, openNursery, rowOf, savedFile } from './page';
import { expect, test } from './quietPage';

test('a reload gives back numbers, invalid texts, the question and the file', async ({ page }) => {
  await openApp(page);
  const marked = '\ufeffname;label;formula;extra\r\nprice;Price;0,8;"kept ""as is"""\r\nother;Other;2;\r\n';
  await chooseFile(page, csvFile('mine.csv', marked));
  await fieldOf(page, 'Price').fill('0.9');
  await fieldOf(page, 'Other').fill('two');
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'Breakeven' }).click();
  await expect(page.getByText(/^Kept on this machine at \d\d:\d\d$/)).toBeVisible();
  await page.waitForTimeout(500);
  await openApp(page);
  await expect(fieldOf(page, 'Price')).toHaveValue('0.9');
  await expect(fieldOf(page, 'Other')).toHaveValue('two');
  await expect(fieldOf(page, 'Other')).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByRole('button', { name: 'Breakeven' })).toHaveAttribute('aria-current', 'page');
  const saved = await savedFile(page);
  expect(saved.name).toBe('mine.csv');
  expect(saved.bytes.toString()).toBe(marked.replace('0,8', '0,9'));
});

test('what was typed just before the page is left is not lost', async ({ page }) => {
  await openNursery(page);
  await fieldOf(page, 'Wage').fill('16.25');
  await page.reload();
  await expect(fieldOf(page, 'Wage')).toHaveValue('16.25');
});

test('nor is a file that was opened just before', async ({ page }) => {
  await openApp(page);
  await page.evaluate(() => {
    const watcher = new MutationObserver(() => {
      if (document.querySelector('h1')?.textContent.startsWith('Does a nursery pay?') !== true) return;
      watcher.disconnect();
      location.reload();
    });
    watcher.observe(document.body, { childList: true, characterData: true, subtree: true });
  });
  const left = page.waitForEvent('load');
  await chooseFile(page, csvFile('nursery.csv', nursery));
  await left;
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Does a nursery pay?');
});

test('two tabs keep their work apart, and a new one goes on with the newest', async ({ page, context }) => {
  await openNursery(page);
  await fieldOf(page, 'Wage').fill('16.25');
  await page.waitForTimeout(500);
  const other = await context.newPage();
  await openApp(other);
  await expect(fieldOf(other, 'Wage')).toHaveValue('16.25');
  await fieldOf(other, 'Wage').fill('29');
  await other.waitForTimeout(500);
  await page.reload();
  await expect(fieldOf(page, 'Wage')).toHaveValue('16.25');
  await other.reload();
  await expect(fieldOf(other, 'Wage')).toHaveValue('29');
  const third = await context.newPage();
  await openApp(third);
  await expect(fieldOf(third, 'Wage')).toHaveValue('29');
});

test('a browser that refuses storage is said, and the page works on', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('storage is switched off', 'SecurityError');
    };
  });
  await openApp(page);
  await expect(page.getByText(/Not kept on this machine: storage is switched off/)).toBeVisible();
  await chooseFile(page, csvFile('nursery.csv', nursery));
  await fieldOf(page, 'Wage').fill('29');
  await expect(headlineOf(page, 'Margin')).toContainText('152,720');
});

test('light or dark follows the system until one is chosen, which is remembered', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openApp(page);
  const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const dark = await ground();
  await page.emulateMedia({ colorScheme: 'light' });
  await expect.poll(ground).not.toBe(dark);
  await page.getByText('Dark', { exact: true }).click();
  await expect.poll(ground).toBe(dark);
  await openApp(page);
  await expect.poll(ground).toBe(dark);
});

test('on paper every row stands open and no control is drawn', async ({ page }) => {
  await openNursery(page);
  await page.getByRole('heading', { level: 3, name: 'Hands' }).click();
  await expect(rowOf(page, 'Wage')).not.toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(rowOf(page, 'Wage')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Open a file' })).not.toBeVisible();
  await page.emulateMedia({ media: 'screen' });
  await expect(rowOf(page, 'Wage')).not.toBeVisible();
});
