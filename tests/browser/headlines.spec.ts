import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { chooseFile, csvFile, fieldOf, openApp } from './page';
import { expect, test } from './quietPage';

/** The share of the window's height that the headlines cover once the page is scrolled. */
async function coveredShare(page: Page): Promise<number> {
  await page.evaluate(() => scrollTo(0, 1500));
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(1000);
  return page.locator('.headlines').evaluate((strip) => {
    const { top, height } = strip.getBoundingClientRect();
    return top === 0 ? height / innerHeight : NaN;
  });
}

/** Many inputs, and a headline of each. */
const many = [
  'name,label,unit,formula,low,high,group,role',
  ...Array.from({ length: 40 }, (_, i) => `part_${i},Cost number ${i},EUR/year,${i}000,0,90000,Costs,`),
  ...Array.from({ length: 40 }, (_, i) => `twice_${i},Twice cost number ${i},EUR/year,2 * part_${i},,,Sums,headline`),
].join('\n');

for (const [width, height] of [
  [1440, 900],
  [390, 844],
] as const) {
  test(`headlines leave four fifths of a window of ${width} by ${height} to the numbers`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openApp(page);
    await fieldOf(page, 'Finishing time after the nursery').fill('11.5');
    await expect(page.getByRole('button', { name: 'and 3 more warnings' })).toBeVisible();
    expect(await coveredShare(page)).toBeLessThanOrEqual(0.2);
    await chooseFile(page, csvFile('many.csv', many));
    await expect(page.locator('.headline')).toHaveCount(40);
    expect(await coveredShare(page)).toBeLessThanOrEqual(0.2);
  });
}

/** The shipped model with a check that fails. */
const failing = readFileSync(new URL('../../models/transplant-hire.csv', import.meta.url), 'utf8').replace(
  ',hours_beyond_staff <= person_hours,',
  ',1 > 2,',
);

for (const [width, height] of [
  [1440, 900],
  [1280, 720],
  [390, 844],
] as const) {
  test(`below a warning no headline is cut through its digits in a window of ${width} by ${height}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await openApp(page);
    await chooseFile(page, csvFile('failing.csv', failing));
    await expect(page.locator('.failing')).toContainText('One hire cannot do the hours without overtime.');
    expect(await coveredShare(page)).toBeLessThanOrEqual(0.2);
    const cut = await page.locator('.headline-list').evaluate((list) => {
      const end = list.getBoundingClientRect().bottom;
      return [...list.querySelectorAll('.headline-value .number')].filter((number) => {
        const { top, bottom } = number.getBoundingClientRect();
        return top < end - 0.5 && bottom > end + 0.5;
      }).length;
    });
    expect(cut).toBe(0);
  });
}

test('on a phone the result that is asked about is the first headline', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openApp(page);
  await expect(page.locator('.headline').first()).toContainText('Margin EUR/year');
  await page.setViewportSize({ width: 1440, height: 900 });
  await expect(page.locator('.headline').first()).toContainText('Finished plants a week');
});
