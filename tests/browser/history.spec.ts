import type { Page } from '@playwright/test';
import { nursery } from './nursery';
import { chooseFile, csvFile, fieldOf, labelOf, openApp, openNursery, rowOf, savedFile } from './page';
import { expect, test } from './quietPage';

const kept = (page: Page) => page.getByText(/^Kept on this machine at \d\d:\d\d$/);
const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true });
const redo = (page: Page) => page.getByRole('button', { name: 'Redo', exact: true });
const question = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name, exact: true });
const hashOf = (page: Page): string => new URL(page.url()).hash;

async function typeWage(page: Page, wage: string): Promise<void> {
  await fieldOf(page, 'Wage').fill(wage);
  await page.keyboard.press('Enter');
}

test.describe('undo outlasts', () => {
  test('a reload: all of it leads back to the very file, and forth again', async ({ page }) => {
    await openNursery(page);
    for (const wage of ['15', '16', '17']) await typeWage(page, wage);
    await labelOf(page, 'Price').click();
    await rowOf(page, 'Price').getByRole('button', { name: 'Move down', exact: true }).click();
    await expect(kept(page)).toBeVisible();
    const last = (await savedFile(page)).bytes.toString();
    await page.reload();
    await expect(undo(page)).toHaveAttribute('aria-disabled', 'false');
    for (let i = 0; i < 4; i += 1) await undo(page).click();
    await expect(undo(page)).toHaveAttribute('aria-disabled', 'true');
    expect((await savedFile(page)).bytes.toString()).toBe(nursery);
    await expect(kept(page)).toBeVisible();
    await page.reload();
    await expect(redo(page)).toHaveAttribute('aria-disabled', 'false');
    for (let i = 0; i < 4; i += 1) await redo(page).click();
    await expect(redo(page)).toHaveAttribute('aria-disabled', 'true');
    expect((await savedFile(page)).bytes.toString()).toBe(last);
  });

  test('the page itself: one that takes the model over has the steps of the one before', async ({ page, context }) => {
    await openNursery(page);
    await typeWage(page, '16');
    await expect(kept(page)).toBeVisible();
    const other = await context.newPage();
    await openApp(other);
    await expect(other.getByText(/^Also open elsewhere/)).toBeVisible();
    await typeWage(page, '17');
    await expect(fieldOf(other, 'Wage')).toHaveValue('17');
    await expect(undo(other)).toHaveAttribute('aria-disabled', 'true');
    await page.close();
    await expect(undo(other)).toHaveAttribute('aria-disabled', 'false');
    await undo(other).click();
    await expect(fieldOf(other, 'Wage')).toHaveValue('16');
    await undo(other).click();
    await expect(fieldOf(other, 'Wage')).toHaveValue('14.5');
    await expect(other.getByText(/^This is a copy/)).toHaveCount(0);
  });

  test('nothing where the steps are not of the model as it is: they are dropped', async ({ page }) => {
    await openNursery(page);
    await typeWage(page, '16');
    await expect(kept(page)).toBeVisible();
    // The first change of a visit is written before its step is.
    await page.waitForTimeout(1_000);
    await page.evaluate(
      () =>
        new Promise<void>((done, fail) => {
          const request = indexedDB.open('raftmargin shelf');
          request.onerror = () => fail(request.error ?? new Error('not opened'));
          request.onsuccess = () => {
            const transaction = request.result.transaction('steps', 'readwrite');
            const store = transaction.objectStore('steps');
            const keys = store.getAllKeys();
            keys.onsuccess = () => {
              for (const key of keys.result) store.put({ version: 1, step: 'torn' }, key);
            };
            transaction.oncomplete = () => {
              request.result.close();
              done();
            };
          };
        }),
    );
    await page.reload();
    await expect(fieldOf(page, 'Wage')).toHaveValue('16');
    await page.waitForTimeout(500);
    await expect(undo(page)).toHaveAttribute('aria-disabled', 'true');
  });
});

test.describe('the browser’s Back', () => {
  test('leads through the questions that were looked at, and Forward again', async ({ page }) => {
    await openNursery(page);
    await question(page, 'Breakeven').click();
    await expect.poll(() => hashOf(page)).toBe('#breakeven');
    await question(page, 'How sure').click();
    await expect.poll(() => hashOf(page)).toBe('#how-sure');
    await typeWage(page, '15');
    await page.goBack();
    await expect(question(page, 'Breakeven')).toHaveAttribute('aria-current', 'page');
    await page.goBack();
    await expect(question(page, 'What matters')).toHaveAttribute('aria-current', 'page');
    expect(hashOf(page)).toBe('');
    await page.goForward();
    await page.goForward();
    await expect(question(page, 'How sure')).toHaveAttribute('aria-current', 'page');
    await expect(fieldOf(page, 'Wage')).toHaveValue('15');
    await page.reload();
    await expect(question(page, 'How sure')).toHaveAttribute('aria-current', 'page');
    expect(hashOf(page)).toBe('#how-sure');
  });

  test('gives back the model that was open before, with its work, and Forward the other', async ({ page }) => {
    await openNursery(page);
    await typeWage(page, '16');
    await expect(kept(page)).toBeVisible();
    await chooseFile(page, csvFile('second.csv', nursery.replace('Does a nursery pay?', 'Another farm')));
    await typeWage(page, '19');
    await page.goBack();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Does a nursery pay?');
    await expect(fieldOf(page, 'Wage')).toHaveValue('16');
    await undo(page).click();
    await expect(fieldOf(page, 'Wage')).toHaveValue('14.5');
    await page.goForward();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Another farm');
    await expect(fieldOf(page, 'Wage')).toHaveValue('19');
    await page.goBack();
    await expect(fieldOf(page, 'Wage')).toHaveValue('14.5');
  });

  test('from a changed sample stays in the changed one', async ({ page }) => {
    await openApp(page);
    await question(page, 'Beds').click();
    await expect.poll(() => hashOf(page)).toBe('#beds');
    const field = page.locator('.entry .number-field').first();
    await field.fill('7');
    await expect(kept(page)).toBeVisible();
    await question(page, 'Timing').click();
    await expect.poll(() => hashOf(page)).toBe('#timing');
    await page.reload();
    await page.goBack();
    await expect(question(page, 'Beds')).toHaveAttribute('aria-current', 'page');
    await page.goBack();
    await expect.poll(() => hashOf(page)).toBe('');
    await expect(field).toHaveValue('7');
  });

  test('leads back to where a link to an entry stood, and closes the shelf and the set-up', async ({ page }) => {
    await openNursery(page);
    await labelOf(page, 'Margin').click();
    const link = rowOf(page, 'Margin').getByRole('button', { name: 'Sales' }).first();
    await link.click();
    await expect.poll(() => hashOf(page)).toMatch(/^#numbers\/\d+$/);
    await expect(page.getByRole('button', { name: 'Back to Margin' })).toBeVisible();
    await page.goBack();
    await expect(link).toBeFocused();
    await expect(page.getByRole('button', { name: 'Back to Margin' })).toHaveCount(0);
    await page.locator('.shelf > summary').click();
    await expect.poll(() => hashOf(page)).toBe('#your-models');
    await expect(page.locator('.shelf-entries > li')).toHaveCount(1);
    await page.goBack();
    await expect(page.locator('.shelf')).not.toHaveAttribute('open');
    await page.getByRole('button', { name: 'Set up my farm' }).click();
    await expect(page.getByRole('heading', { name: 'Set up my farm' })).toBeFocused();
    expect(hashOf(page)).toBe('#set-up');
    await page.goBack();
    await expect(fieldOf(page, 'Wage')).toBeVisible();
  });

  test('an address that names a question or an entry opens it, and says nothing of the model', async ({ page }) => {
    await openNursery(page);
    await page.goto('/#the-case');
    await expect(question(page, 'The case')).toHaveAttribute('aria-current', 'page');
    await page.goto('/#numbers/3');
    await expect(fieldOf(page, 'Wage')).toBeFocused();
    await page.goto('/#nothing-of-ours');
    await expect(question(page, 'The case')).toHaveAttribute('aria-current', 'page');
  });
});
