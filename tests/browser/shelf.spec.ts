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
  const entries = page.locator('.shelf-entries > li');
  await expect(entries).toHaveCount(2);
  await entries.filter({ hasText: 'Does a nursery pay?' }).getByRole('button', { name: 'Open', exact: true }).click();
  await expect(fieldOf(page, 'Wage')).toHaveValue('16');
});

test('a model is deleted only after a question', async ({ page }) => {
  await openNursery(page);
  await fieldOf(page, 'Wage').fill('16');
  await expect(kept(page)).toBeVisible();
  await openShelf(page);
  const entries = page.locator('.shelf-entries > li');
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

test('a version is kept with a saved file, and going back to it is one step', async ({ page }) => {
  await openNursery(page);
  await fieldOf(page, 'Wage').fill('16');
  await expect(kept(page)).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a file' }).first().click();
  await saving;
  await fieldOf(page, 'Wage').fill('17');
  await fieldOf(page, 'Price').fill('0.9');
  await expect(kept(page)).toBeVisible();
  await openShelf(page);
  await page.locator('.shelf-entries').getByRole('button', { name: 'Versions' }).click();
  const versions = page.locator('.versions li');
  await expect(versions.filter({ hasText: 'As the file was opened' })).toHaveCount(1);
  await versions
    .filter({ hasText: /Wage$|Wage / })
    .last()
    .getByRole('button', { name: /^Go back/ })
    .click();
  await expect(page.getByText(/^The model is as it was on/)).toBeVisible();
  await expect(fieldOf(page, 'Wage')).toHaveValue('16');
  await expect(fieldOf(page, 'Price')).toHaveValue('0.78');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(fieldOf(page, 'Wage')).toHaveValue('17');
  await expect(fieldOf(page, 'Price')).toHaveValue('0.9');
});

test('a version brings back the words of the case where that is asked', async ({ page }) => {
  await openApp(page);
  await fieldOf(page, 'Wage').fill('16');
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'The case' }).click();
  const words = page.getByRole('textbox', { name: 'In your own words' });
  await words.fill('First words');
  await expect(kept(page)).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a file' }).first().click();
  await saving;
  await words.fill('Second words');
  await fieldOf(page, 'Wage').fill('17');
  await expect(kept(page)).toBeVisible();
  await openShelf(page);
  await page.locator('.shelf-entries').getByRole('button', { name: 'Versions' }).click();
  await page
    .locator('.versions li')
    .filter({ hasText: 'the words of the case' })
    .getByRole('button', { name: /with the words of its case and its timed batches$/ })
    .click();
  await expect(page.getByText(/^The model, the words of its case/)).toBeVisible();
  await expect(words).toHaveValue('First words', { timeout: 15_000 });
  await expect(fieldOf(page, 'Wage')).toHaveValue('16');
});

test('a writing that fails is tried again until it works', async ({ page }) => {
  await page.addInitScript(() => {
    const { prototype } = IDBDatabase;
    const begin = Reflect.get(prototype, 'transaction') as (...given: unknown[]) => IDBTransaction;
    Reflect.set(prototype, 'transaction', function (this: IDBDatabase, ...given: unknown[]) {
      if (document.body.dataset['disk'] === 'full') throw new DOMException('no room', 'QuotaExceededError');
      return begin.apply(this, given);
    });
  });
  await openNursery(page);
  await expect(kept(page)).toBeVisible();
  await page.evaluate(() => void (document.body.dataset['disk'] = 'full'));
  await fieldOf(page, 'Wage').fill('16');
  await expect(page.getByText(/^Not kept on this machine yet: .* It is tried again until it works/)).toBeVisible();
  await page.evaluate(() => void (document.body.dataset['disk'] = ''));
  await expect(kept(page)).toBeVisible({ timeout: 15_000 });
  await page.reload();
  await expect(fieldOf(page, 'Wage')).toHaveValue('16');
});

test('the model that is open is deleted after a question, and another one opens', async ({ page }) => {
  await openNursery(page);
  await fieldOf(page, 'Wage').fill('16');
  await expect(kept(page)).toBeVisible();
  await chooseFile(page, csvFile('second.csv', nursery.replace('Does a nursery pay?', 'Another farm')));
  await fieldOf(page, 'Wage').fill('19');
  await expect(kept(page)).toBeVisible();
  await openShelf(page);
  const entries = page.locator('.shelf-entries > li');
  const second = entries.filter({ hasText: 'second.csv' });
  await second.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(second.getByText(/Another model is opened here then/)).toBeVisible();
  await second.getByRole('button', { name: 'Yes, delete it' }).click();
  await expect(page.getByRole('heading', { level: 1 })).not.toContainText('Another farm');
  await openShelf(page);
  await expect(entries).toHaveCount(1);
  await expect(entries).toContainText('nursery.csv');
});

test('several files at once: each has its place on the shelf, the last is open, and what is wrong is told by file', async ({
  page,
}) => {
  await openNursery(page);
  const named = (name: string) => csvFile(`${name}.csv`, nursery.replace('Does a nursery pay?', `Farm ${name}`));
  const broken = { name: 'book.xlsx', mimeType: 'text/csv', buffer: Buffer.from([0x50, 0x4b, 3, 4, 0, 0]) };
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles([named('a'), broken, named('b'), named('c')]);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Farm c');
  const told = page.getByRole('alert').filter({ hasText: '1 of 4 files were not opened' });
  await expect(told).toContainText('book.xlsx: ');
  await expect(told).toContainText('c.csv is open; 2 others are kept under Your models.');
  await openShelf(page);
  await expect(page.locator('.shelf-entries > li')).toHaveCount(4);
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
