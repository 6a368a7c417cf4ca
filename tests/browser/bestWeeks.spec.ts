import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { chooseFile, csvFile, fieldOf, openApp } from './page';
import { expect, test } from './quietPage';
import { choicesAfter } from './takingOut';

/** A crop in round numbers whose best weeks are worked out by hand: it is worth most at 12 days and 70 holes. */
const hill = [
  'name,label,unit,formula,low,high,step,group,role,crop,plan: One spacing,plan: Two spacings',
  ',How long in the nursery? A made-up bed,,,,,,,,,,',
  'boards,Boards on the bed,board,90,,,,Bed,,boards,,',
  'every,Between sowings,day,2,,,,Bed,,interval,,',
  'plants,Plants,plant,1,,,,Bed,,,,',
  'early,Days crowded,day,,,,1,Bed,,stage 1 time,0,10',
  'holes,Holes crowded,plant/board,60,,,5,Bed,,stage 1 density,,',
  'late,Days wide,day,,,,,Bed,,stage 2 time,24,14',
  'wide,Holes wide,plant/board,18,,,,Bed,,stage 2 density,,',
  'day_loss,Loss a day squared,EUR/day^2,1,,,,Money,,,,',
  'hole_loss,Loss a hole squared,EUR*board^2/plant^2,,,,,Money,,,0,1',
  'top_day,Best day,day,12,,,,Money,,,,',
  'top_hole,Best holes,plant/board,70,,,,Money,,,,',
  'most,Most,EUR,2000,,,,Money,,,,',
  'worth,Worth,EUR,most - day_loss * (early - top_day) ^ 2 - hole_loss * (holes - top_hole) ^ 2,,,,Money,headline,,,',
  'held,Worth of the days,EUR,most - day_loss * (late - top_day) ^ 2 + hole_loss * holes ^ 2,,,,Money,headline,,,',
  '',
].join('\n');

const screen = (page: Page): Locator => page.getByRole('region', { name: 'Beds', exact: true });
const part = (page: Page): Locator => screen(page).getByRole('region', { name: 'Best weeks' });
const finding = (page: Page): Locator => part(page).locator('.heat-said');

async function open(page: Page, model = hill): Promise<void> {
  await openApp(page);
  await chooseFile(page, csvFile('made-up.csv', model));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('made-up', { ignoreCase: true });
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'Beds' }).click();
  await expect(screen(page).locator('.said')).toBeVisible();
}

/** Scrolls to the best weeks; what is worked out later above them may push them away once more. */
async function goToBest(page: Page): Promise<void> {
  await expect(async () => {
    await part(page).scrollIntoViewIfNeeded();
    await expect(finding(page)).toBeInViewport({ timeout: 500 });
  }).toPass();
}

async function openAtBest(page: Page): Promise<void> {
  await open(page);
  await goToBest(page);
}

// One spacing is worth 2,000 − 12² = 1,856, two 2,000 at best and 2,000 − 2² − 10² = 1,896 today.
test('the best time and density are found, with how flat they are', async ({ page }) => {
  await openAtBest(page);
  await expect(finding(page)).toContainText(
    'The difference in Worth is highest with 12 days on crowded boards at ' +
      '70 plants per board: 144.00 EUR, 104.00 EUR more than with today’s 10 days at 60 plants per board.',
  );
  await expect(finding(page)).toContainText(
    'At 70 plants per board it stays within 2 % of the best between 11 and 13 days; ' +
      'with 12 days, only at 70 plants per board.',
  );
  await expect(part(page).getByRole('img', { name: /^The difference in Worth is highest/ })).toHaveCount(2);
});

test('of the plan alone, where that is looked at', async ({ page }) => {
  await openAtBest(page);
  await part(page).getByRole('radio', { name: 'B Two spacings' }).check();
  await expect(finding(page)).toContainText(
    'Worth is highest with 12 days on crowded boards at 70 plants per board: ' +
      '2,000 EUR, 104.00 EUR more than with today’s 10 days at 60 plants per board.',
  );
  // 40 below the best: 6 days off (36), not 7 (49); 5 holes off (25), not 10 (100).
  await expect(finding(page)).toContainText(
    'At 70 plants per board it stays within 2 % of the best between 6 and 15 days; with 12 days, between 65 and 75 plants per board.',
  );
});

test('the total time is held unless someone says otherwise, and the edge is said plainly', async ({ page }) => {
  await openAtBest(page);
  await part(page).getByRole('combobox', { name: 'Result' }).selectOption({ label: 'Worth of the days' });
  // 12 days wide are 12 crowded: together 24.
  await expect(finding(page)).toContainText('The difference in Worth of the days is highest with 12 days on');
  await expect(finding(page)).toContainText(
    'most plants per board looked at: something further out may be better still.',
  );
  await expect(part(page)).toContainText('Days wide gives back each day, so that the total time stays.');
  await part(page)
    .getByRole('radio', { name: /^time on .* stays$/ })
    .check();
  await expect(finding(page)).toContainText('highest with 10 days on');
  await expect(part(page)).toContainText('No other time moves with it.');
});

test('the lowest can be asked for, and a keystroke looks anew', async ({ page }) => {
  await openAtBest(page);
  await part(page).getByRole('radio', { name: 'lowest' }).check();
  await expect(finding(page)).toContainText('The difference in Worth is lowest with 5 days');
  await part(page).getByRole('radio', { name: 'highest' }).check();
  await fieldOf(page, 'Best day').fill('9');
  await expect(finding(page)).toContainText('The difference in Worth is highest with 9 days');
});

test('the table says what is worse than today', async ({ page }) => {
  await openAtBest(page);
  await part(page).getByText('The same numbers as a table').click();
  const table = part(page).getByRole('table');
  await expect(table.getByRole('columnheader', { name: '10 today' })).toBeVisible();
  await expect(table.getByRole('rowheader', { name: '60 today' })).toBeVisible();
  await expect(table.getByRole('img', { name: 'worse than today' }).first()).toBeVisible();
});

test('a plan without a nursery is asked nothing', async ({ page }) => {
  await open(page);
  await expect(part(page)).toBeAttached();
  await screen(page).getByRole('radio', { name: /^A/ }).check();
  await expect(part(page)).toHaveCount(0);
});

for (const [width, colorScheme] of [
  [1440, 'light'],
  [390, 'dark'],
  [320, 'light'],
] as const) {
  test(`axe finds nothing at ${width} px, ${colorScheme}, and nothing runs out of the page`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await openAtBest(page);
    await expect(finding(page)).toContainText('highest with 12 days');
    await part(page).getByText('The same numbers as a table').click();
    const choices = choicesAfter(part(page).getByRole('table'));
    await choices.locator('summary').click();
    await expect(choices.getByRole('button', { name: 'Save it as CSV' })).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).include('.best-weeks').analyze();
    expect(violations).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  });
}
