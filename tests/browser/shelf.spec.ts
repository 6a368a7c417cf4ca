import type { BrowserContext, Page } from '@playwright/test';
import { nursery } from './nursery';
import { chooseFile, csvFile, fieldOf, openApp, openNursery } from './page';
import { expect, test } from './quietPage';

const kept = (page: Page) => page.getByText(/^Kept on this machine at \d\d:\d\d$/);

async function openShelf(page: Page): Promise<void> {
  await page.locator('.shelf > summary').click();
}

/** A tab in which a file of its own was opened and its wage changed. */
async function tabWith(context: BrowserContext, wage: string): Promise<Page> {
  const page = await context.newPage();
  await openApp(page);
  await chooseFile(page, csvFile(`farm ${wage}.csv`, nursery));
  await fieldOf(page, 'Wage').fill(wage);
  await expect(kept(page)).toBeVisible();
  return page;
}

test('eight tabs that are loaded again in turn each show their own number', async ({ context }) => {
  test.setTimeout(120_000);
  const wages = ['11', '12', '13', '14', '15', '16', '17', '18'];
  const pages: Page[] = [];
  for (const wage of wages) pages.push(await tabWith(context, wage));
  for (const [i, page] of pages.entries()) {
    await page.reload();
    await expect(fieldOf(page, 'Wage')).toHaveValue(wages[i]!);
  }
});

test('a second page on one model follows it live, and its own change makes a copy', async ({ page, context }) => {
  await openNursery(page);
  await fieldOf(page, 'Wage').fill('16');
  await expect(kept(page)).toBeVisible();
  const other = await context.newPage();
  await openApp(other);
  await expect(other.getByText(/^Also open elsewhere/)).toBeVisible();
  await expect(fieldOf(other, 'Wage')).toHaveValue('16');
  await fieldOf(page, 'Wage').fill('17');
  await expect(fieldOf(other, 'Wage')).toHaveValue('17');
  await fieldOf(other, 'Wage').fill('29');
  await expect(other.getByText(/^This is a copy from here on/)).toBeVisible();
  await expect(kept(other)).toBeVisible();
  await expect(fieldOf(page, 'Wage')).toHaveValue('17');
  await other.reload();
  await expect(fieldOf(other, 'Wage')).toHaveValue('29');
  await page.reload();
  await expect(fieldOf(page, 'Wage')).toHaveValue('17');
});

test('a window that the page opens does not take its work', async ({ page }) => {
  await openNursery(page);
  await fieldOf(page, 'Wage').fill('16');
  await expect(kept(page)).toBeVisible();
  const opening = page.waitForEvent('popup');
  await page.evaluate(() => void window.open(location.href));
  const other = await opening;
  await expect(other.getByText(/^Also open elsewhere/)).toBeVisible();
  await fieldOf(other, 'Wage').fill('29');
  await expect(kept(other)).toBeVisible();
  await page.reload();
  await expect(fieldOf(page, 'Wage')).toHaveValue('16');
});

test('opening another model takes no other’s place: both stand on the shelf, and can be opened again', async ({
  page,
}) => {
  await openNursery(page);
  await fieldOf(page, 'Wage').fill('16');
  await expect(kept(page)).toBeVisible();
  await chooseFile(page, csvFile('second.csv', nursery.replace('Does a nursery pay?', 'Another farm')));
  await fieldOf(page, 'Wage').fill('19');
  await expect(kept(page)).toBeVisible();
  await openShelf(page);
  const entries = page.locator('.shelf-entries li');
  await expect(entries).toHaveCount(2);
  await entries.filter({ hasText: 'Does a nursery pay?' }).getByRole('button', { name: 'Open', exact: true }).click();
  await expect(fieldOf(page, 'Wage')).toHaveValue('16');
});

test('a model is deleted only after a question', async ({ page }) => {
  await openNursery(page);
  await fieldOf(page, 'Wage').fill('16');
  await expect(kept(page)).toBeVisible();
  await openShelf(page);
  const entries = page.locator('.shelf-entries li');
  await entries.first().getByRole('button', { name: 'Duplicate' }).click();
  await expect(entries).toHaveCount(2);
  const copy = entries.filter({ hasText: '(copy)' });
  await copy.getByRole('button', { name: 'Delete', exact: true }).click();
  await copy.getByRole('button', { name: 'Keep it' }).click();
  await expect(entries).toHaveCount(2);
  await copy.getByRole('button', { name: 'Delete', exact: true }).click();
  await copy.getByRole('button', { name: 'Yes, delete it' }).click();
  await expect(entries).toHaveCount(1);
});

test('a record that this version cannot read stays, and can be saved', async ({ page }) => {
  await openNursery(page);
  await fieldOf(page, 'Wage').fill('16');
  await expect(kept(page)).toBeVisible();
  await page.evaluate(
    () =>
      new Promise<void>((done, fail) => {
        const request = indexedDB.open('raftmargin shelf');
        request.onerror = () => fail(request.error ?? new Error('not opened'));
        request.onsuccess = () => {
          const transaction = request.result.transaction('works', 'readwrite');
          transaction.objectStore('works').put({ version: 9, name: 'later.csv' }, 'from later');
          transaction.oncomplete = () => {
            request.result.close();
            done();
          };
        };
      }),
  );
  await page.reload();
  await fieldOf(page, 'Wage').fill('18');
  await expect(kept(page)).toBeVisible();
  await openShelf(page);
  await expect(page.getByText('from later')).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save it as a file' }).click();
  expect((await saving).suggestedFilename()).toBe('from-later.json');
});

test('a storage that never answers is not waited for', async ({ page }) => {
  await page.addInitScript(() => {
    const open = indexedDB.open.bind(indexedDB);
    IDBFactory.prototype.open = () => {
      const request = open('nobody hears of this one');
      request.addEventListener = () => undefined;
      return request;
    };
  });
  await page.goto('/');
  await expect(page.getByRole('heading', { name: 'Numbers', exact: true })).toBeAttached({ timeout: 15_000 });
  await expect(page.getByText(/^Not kept on this machine: the browser’s storage does not answer/)).toBeVisible();
});
