import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { chooseFile, csvFile, fieldOf, openApp } from './page';
import { expect, test } from './quietPage';

const sheet = (page: Page): Locator => page.locator('.lesson-sheet');
const sheetButton = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });

async function openLesson(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.print = () => undefined;
  });
  await openApp(page);
  await chooseFile(page, csvFile('density-lesson.csv', readFileSync('models/density-lesson.csv', 'utf8')));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('How many boards should the nursery have?');
}

test('the sheet without answers has questions, what is given and room to write, and no answer', async ({ page }) => {
  await openLesson(page);
  await expect(sheet(page)).toHaveCount(0);
  await sheetButton(page, 'Print the sheet without answers').click();
  await page.emulateMedia({ media: 'print' });
  await expect(sheet(page).getByRole('heading', { level: 1 })).toHaveText('How many boards should the nursery have?');
  await expect(sheet(page).getByRole('listitem')).toHaveCount(11);
  await expect(sheet(page).getByRole('row').filter({ hasText: 'Boards on the bed' })).toContainText(/90\s*board/);
  await expect(sheet(page).getByRole('row').filter({ hasText: 'Weeks on wide boards' })).toContainText(/3\s*2/);
  await expect(sheet(page).locator('.sheet-lines')).toHaveCount(11);
  // Neither an answer nor a result stands in the sheet, nor anything else of the page beside it.
  await expect(sheet(page)).not.toContainText('Most people say 30');
  await expect(sheet(page)).not.toContainText('Heads a week when the stages keep pace');
  const printed = await page.evaluate(() => document.body.innerText);
  expect(printed).toContain('Step 3. Two spacings');
  expect(printed).not.toContain('Most people say 30');
  expect(printed).not.toContain('Print the answer sheet');
});

test('the answer sheet has the answers, and the results of the numbers on the screen', async ({ page }) => {
  await openLesson(page);
  await fieldOf(page, 'Boards on the bed').fill('180');
  await sheetButton(page, 'Print the answer sheet').click();
  await page.emulateMedia({ media: 'print' });
  await expect(sheet(page)).toContainText('10. Most people say 30');
  await expect(sheet(page)).toContainText('How to use this lesson');
  await expect(sheet(page).getByRole('row').filter({ hasText: 'Boards on the bed' })).toContainText(/180\s*board/);
  const result = sheet(page).getByRole('row').filter({ hasText: 'Heads a week when the stages keep pace' });
  await expect(result).toContainText(/1,080\s*1,440\s*plant\/week/);
});

test('once it is printed the sheet is gone', async ({ page }) => {
  await openLesson(page);
  await sheetButton(page, 'Print the sheet without answers').click();
  // The sheet loads when it is asked for; paper comes only after it.
  await expect(sheet(page)).toHaveCount(1);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect(sheet(page)).toHaveCount(0);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('heading', { name: 'Numbers', exact: true })).toBeVisible();
});

test('a model that is no lesson offers no sheets', async ({ page }) => {
  await openApp(page);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Does it pay to hire a transplanter?');
  await expect(sheetButton(page, 'Print the answer sheet')).toHaveCount(0);
});
