import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { chooseFile, csvFile, openApp } from './page';
import { paperOf, pressPrint, withoutDialog } from './printing';
import { expect, test } from './quietPage';

/** A4 less the margins, in CSS pixels. */
const paperWidth = 680;

const questions = (page: Page): Locator => page.getByRole('navigation', { name: 'Questions' });
const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });

async function pagesOf(page: Page, format: 'A4' | 'Letter' = 'A4'): Promise<number> {
  return (await paperOf(page, format)).length;
}

async function openBeds(page: Page): Promise<void> {
  await withoutDialog(page);
  await openApp(page);
  await questions(page).getByRole('button', { name: 'Beds' }).click();
  await expect(page.locator('.work-week')).toBeVisible();
}

/** How far what is drawn or written reaches to the right, on a page of that width. */
async function widest(page: Page): Promise<number> {
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: paperWidth, height: 1000 });
  return page.evaluate(() => document.documentElement.scrollWidth);
}

/** Notes, when the page is printed, how wide the first canvas of some kind is drawn and shown; nothing without one. */
async function noteOnPaper(page: Page, canvases: string): Promise<void> {
  await page.evaluate((found) => {
    matchMedia('print').addEventListener(
      'change',
      () =>
        queueMicrotask(() => {
          const canvas = document.querySelector<HTMLCanvasElement>(found);
          const widths = canvas === null ? [] : [canvas.width / devicePixelRatio, canvas.getBoundingClientRect().width];
          sessionStorage.setItem('noted', JSON.stringify(widths.map(Math.round)));
        }),
      { once: true },
    );
  }, canvases);
}

async function noted(page: Page): Promise<number[]> {
  return JSON.parse(await page.evaluate(() => sessionStorage.getItem('noted') ?? '[]')) as number[];
}

test('the numbers print black on white in either scheme, everything unfolded', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.setViewportSize({ width: 800, height: 900 });
  await openApp(page);
  expect(await pagesOf(page)).toBeGreaterThanOrEqual(4);
  expect(await pagesOf(page)).toBeLessThanOrEqual(8);
  expect(await widest(page)).toBeLessThanOrEqual(paperWidth);
  const colours = await page.evaluate(() => {
    const { backgroundColor } = getComputedStyle(document.documentElement);
    return [backgroundColor, getComputedStyle(document.querySelector('.entry-label')!).color];
  });
  expect(colours).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
  await expect(page.locator('.headline').first()).toBeVisible();
  await expect(page.getByText('Look at the change in margin against the seconds')).toBeVisible();
  await expect(page.getByText('They are no financial, tax or legal advice')).toBeVisible();
  await expect(button(page, 'Save a file')).toBeHidden();
});

test('on a wide screen the question beside the numbers is printed too', async ({ page }) => {
  await openApp(page);
  const side = page.locator('.side-half');
  await expect(side.locator('canvas').first()).toBeVisible();
  await noteOnPaper(page, '.side-half canvas');
  await pagesOf(page);
  expect(await noted(page)).not.toEqual([]);
  await expect(side).toBeVisible();
});

test('the beds fill a few pages, with their finding, the picture and the cautions, and nothing to press', async ({
  page,
}) => {
  await openBeds(page);
  await pressPrint(page, button(page, 'Print the beds'));
  const count = await pagesOf(page);
  expect(count).toBeGreaterThanOrEqual(2);
  expect(count).toBeLessThanOrEqual(5);
  await pressPrint(page, button(page, 'Print the beds'));
  expect(await widest(page)).toBeLessThanOrEqual(paperWidth);
  const beds = page.locator('.beds');
  await expect(beds.locator('.finding').first()).toBeVisible();
  await expect(beds.getByRole('img').first()).toBeVisible();
  for (const caution of ['Foam dust irritates', 'Every outlet there needs protection', 'Leaves are eaten raw']) {
    await expect(beds.getByText(caution)).toBeVisible();
  }
  await expect(beds.getByText('Source: NIOSH')).toBeVisible();
  await expect(beds.getByRole('button', { name: 'Try it' }).first()).toBeHidden();
  await expect(beds.locator('.work-buttons')).toBeHidden();
});

test('the week’s work fits on one page, with the cautions for the hands', async ({ page }) => {
  await openBeds(page);
  await pressPrint(page, button(page, 'Print the week'));
  expect(await pagesOf(page, 'Letter')).toBe(1);
  await pressPrint(page, button(page, 'Print the week'));
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.beds').getByText('Moving plants repeats one motion')).toBeVisible();
  await expect(page.locator('.beds').getByText('Least pay, overtime, rests')).toBeVisible();
});

test('a chart that is drawn wider than the paper is drawn anew for it', async ({ page }) => {
  await page.setViewportSize({ width: 1050, height: 900 });
  await openApp(page);
  await questions(page).getByRole('button', { name: 'Breakeven' }).click();
  const canvas = page.locator('.breakeven canvas').first();
  await expect(canvas).toBeVisible();
  await noteOnPaper(page, '.breakeven canvas');
  await pagesOf(page);
  const [drawn, shown] = await noted(page);
  expect(drawn).toBe(shown);
  // The page is laid out in whole points first, a few pixels wider.
  expect(shown).toBeLessThanOrEqual(paperWidth + 4);
});

test('the lesson’s sheet is three pages at the most, in A4 and in Letter', async ({ page }) => {
  await withoutDialog(page);
  await openApp(page);
  await chooseFile(page, csvFile('density-lesson.csv', readFileSync('models/density-lesson.csv', 'utf8')));
  for (const format of ['A4', 'Letter'] as const) {
    for (const sheet of ['Print the sheet without answers', 'Print the answer sheet']) {
      await pressPrint(page, button(page, sheet));
      await expect(page.locator('.lesson-sheet')).toHaveCount(1);
      const count = await pagesOf(page, format);
      expect(count).toBeGreaterThanOrEqual(2);
      expect(count).toBeLessThanOrEqual(3);
    }
  }
});
