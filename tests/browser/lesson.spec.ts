import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { chooseFile, csvFile, fieldOf, openApp } from './page';
import { pressPrint, withoutDialog } from './printing';
import { expect, test } from './quietPage';

const sheet = (page: Page): Locator => page.locator('.lesson-sheet');
const sheetButton = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });

async function openLesson(page: Page): Promise<void> {
  await withoutDialog(page);
  await openApp(page);
  await chooseFile(page, csvFile('density-lesson.csv', readFileSync('models/density-lesson.csv', 'utf8')));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('How many boards should the nursery have?');
}

test('the sheet without answers has questions, what is given and room to write, and no answer', async ({ page }) => {
  await openLesson(page);
  await expect(sheet(page)).toHaveCount(0);
  await pressPrint(page, sheetButton(page, 'Print the sheet without answers'));
  await page.emulateMedia({ media: 'print' });
  await expect(sheet(page).getByRole('heading', { level: 1 })).toHaveText('How many boards should the nursery have?');
  await expect(sheet(page).getByRole('listitem')).toHaveCount(11);
  await expect(sheet(page).getByRole('row').filter({ hasText: 'Boards on the bed' })).toContainText(/90\s*board/);
  await expect(sheet(page).getByRole('row').filter({ hasText: 'Weeks on wide boards' })).toContainText(/3\s*2/);
  await expect(sheet(page).locator('.sheet-lines')).toHaveCount(11);
  // Neither an answer nor a result stands in the sheet, nor anything else of the page beside it.
  await expect(sheet(page)).not.toContainText('Most people go by the weeks');
  await expect(sheet(page)).not.toContainText('Heads a week when the stages keep pace');
  const printed = await page.evaluate(() => document.body.innerText);
  expect(printed).toContain('Step 3. Two spacings: 1\u00a0week at 16\u00a0in²\u00a0per\u00a0plant');
  expect(printed).not.toContain('Most people go by the weeks');
  expect(printed).not.toContain('Print the answer sheet');
});

test('the answer sheet has the answers, and the results of the numbers on the screen', async ({ page }) => {
  await openLesson(page);
  await fieldOf(page, 'Boards on the bed').fill('180');
  await pressPrint(page, sheetButton(page, 'Print the answer sheet'));
  await page.emulateMedia({ media: 'print' });
  // Twice the boards: 20 in the nursery, and 60 by the weeks.
  await expect(sheet(page)).toContainText('20. Most people go by the weeks and say 60.');
  await expect(sheet(page)).not.toContainText('the numbers that the lesson came with');
  await expect(sheet(page)).toContainText('How to use this lesson');
  await expect(sheet(page).getByRole('row').filter({ hasText: 'Boards on the bed' })).toContainText(/180\s*board/);
  const result = sheet(page).getByRole('row').filter({ hasText: 'Heads a week when the stages keep pace' });
  await expect(result).toContainText(/1,080\s*1,440\s*plant\/week/);
});

test('once it is printed the sheet is gone', async ({ page }) => {
  await openLesson(page);
  await pressPrint(page, sheetButton(page, 'Print the sheet without answers'));
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

test('questions and answers follow the numbers, names and plans that are changed', async ({ page }) => {
  await openLesson(page);
  const step = page.getByText('How many heads a week do the');
  await expect(step).toContainText('do the 90 boards finish?');
  await step.click();
  await expect(page.getByText('plants stand on the bed.')).toContainText('90 boards × 18 = 1,620 plants');
  await fieldOf(page, 'Boards on the bed').fill('60');
  await expect(step).toContainText('do the 60 boards finish?');
  await expect(page.getByText('plants stand on the bed.')).toContainText('60 boards × 18 = 1,080 plants');
});

test('results stay hidden, in the headlines too, until their step is opened', async ({ page }) => {
  await openLesson(page);
  const headline = page.locator('.headline').filter({ hasText: 'Heads a week when the stages keep pace' });
  const row = page.locator('.entry').filter({ hasText: 'Heads a week when the stages keep pace' });
  await expect(headline).toContainText('720');
  await page.getByRole('button', { name: 'Hide the results until they are guessed' }).click();
  await expect(headline).not.toContainText(/540|720|180/);
  await expect(row).not.toContainText(/540|720|180/);
  await expect(page.getByText('Results are hidden until the class has guessed them.')).toBeVisible();
  await page.reload();
  await expect(headline.locator('.headline-value').first()).toContainText('hidden');
  // Step 2 tells what one spacing gives, and nothing of the other plan.
  await page.getByText('How many heads a week do the').click();
  await expect(headline).toContainText('540');
  await expect(headline).not.toContainText(/720|180/);
  await expect(row).toContainText('540');
  await page.getByText('Step 4. How many heads a week is that?').click();
  await expect(headline).toContainText('720');
  await page.getByRole('button', { name: 'Show the results' }).first().click();
  await expect(page.getByRole('heading', { name: 'What matters' })).toBeVisible();
});

test('a class is taught step by step by keys, with its guesses beside the answer', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 720 });
  await openLesson(page);
  await page.getByRole('button', { name: 'Teach it step by step' }).click();
  const teach = page.locator('.teach');
  await expect(teach.getByText('Step 1 of 11')).toBeVisible();
  for (const key of ['PageDown', 'ArrowRight', 'ArrowRight', 'ArrowLeft']) await page.keyboard.press(key);
  await expect(teach.getByRole('heading', { level: 1 })).toContainText('how many of the 90 boards should the nursery');
  await teach.getByLabel('Guesses of the class').fill('30 45 12');
  await expect(teach).toContainText('3 guesses, from 12 to 45; the middle one is 30.');
  await expect(teach).not.toContainText(/answer is|Most people/);
  await expect(teach.locator('.headline').nth(1)).toContainText('hidden');
  await teach.getByRole('heading', { level: 1 }).click();
  await page.keyboard.press('Enter');
  await expect(teach).toContainText('The answer is 10 boards; the nearest guess was 12.');
  await expect(teach).toContainText('10. Most people go by the weeks and say 30.');
  await expect(teach.locator('.headline').nth(1)).toContainText('10');
  // Nothing that the class reads is smaller than 24 px; links that only the teacher presses count too.
  const sizes = await teach.evaluate((root) =>
    [...root.querySelectorAll('*')]
      .filter((element) => [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()))
      .filter((element) => element.getClientRects().length > 0 && !element.closest('.heard'))
      .map((element) => ({ text: element.textContent, size: parseFloat(getComputedStyle(element).fontSize) })),
  );
  expect(sizes.filter(({ size }) => size < 24)).toEqual([]);
  await page.reload();
  await expect(teach.getByLabel('Guesses of the class')).toHaveValue('30 45 12');
  await teach.getByRole('button', { name: 'Back to the numbers' }).click();
  await expect(page.getByRole('heading', { name: 'Numbers', exact: true })).toBeVisible();
});

test('a link opens the lesson at a step, with the numbers that it was copied with', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openLesson(page);
  await fieldOf(page, 'Boards on the bed').fill('60');
  await page.getByRole('button', { name: 'Teach it step by step' }).click();
  const teach = page.locator('.teach');
  // The keys of the one who teaches are heard once the step stands.
  await expect(teach.getByText('Step 1 of 11')).toBeVisible();
  await page.keyboard.press('ArrowRight');
  await expect(teach.getByText('Step 2 of 11')).toBeVisible();
  await teach.getByRole('button', { name: 'Copy a link to this step' }).click();
  await expect(teach.getByRole('status').filter({ hasText: 'link' })).toBeVisible();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  expect(link).toMatch(/&step=2$/);
  const other = await context.newPage();
  await other.goto(link);
  await expect(other.locator('.teach').getByText('Step 2 of 11')).toBeVisible();
  await expect(other.locator('.teach').getByRole('heading', { level: 1 })).toContainText('do the 60 boards finish?');
  await expect(other.locator('.teach .headline').first()).toContainText('hidden');
});
