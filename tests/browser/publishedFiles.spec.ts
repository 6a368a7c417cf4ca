import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { chooseFile, csvFile, openApp, rowOf } from './page';
import { expect, test } from './quietPage';

/*
 * The published examples of tests/reference/published, each of which names its source, as the page shows them. What
 * the command line makes of the same files, and the list of all, stands in tests/reference/published.test.ts.
 */

const textOf = (name: string): string =>
  readFileSync(new URL(`../reference/published/${name}.csv`, import.meta.url), 'utf8');

const region = (page: Page, name: string): Locator => page.getByRole('region', { name, exact: true });

async function ask(page: Page, question: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: question }).click();
}

async function openModel(page: Page, name: string, title: string): Promise<void> {
  await openApp(page);
  await chooseFile(page, csvFile(`${name}.csv`, textOf(name)));
  await expect(page.getByRole('heading', { level: 1 })).toContainText(title);
}

async function openTrials(page: Page, name: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open trials (CSV)' }).click();
  await (await chooser).setFiles(csvFile(`${name}.csv`, textOf(name)));
}

test('two partial budgets: −37.37 a bed and −4,500 on 100 acres', async ({ page }) => {
  for (const [name, title, net] of [
    ['salad-greens-for-beans', 'Salad greens', '−37.37'],
    ['corn-for-dry-beans', 'Corn for dry beans', '−4,500.00'],
  ] as const) {
    await openModel(page, name, title);
    await ask(page, 'The case');
    const budget = page.getByRole('table', { name: /^Partial budget/ });
    await expect(budget.getByRole('row', { name: /^Net change/ })).toContainText(net);
  }
});

test('a machine is paid back after 4.8 years, and an annual equivalent of 7,418', async ({ page }) => {
  const years = region(page, 'What does the outlay bring over the years?');
  const name = async (label: RegExp): Promise<void> => {
    await ask(page, 'The case');
    await years.scrollIntoViewIfNeeded();
    await years.getByRole('radio', { name: 'entries of this model' }).check();
    await years.getByRole('checkbox', { name: label }).check();
  };
  await openModel(page, 'transplanting-machine', 'A machine for cuttings');
  await name(/Machine bought/);
  await expect(years.locator('.years-finding')).toContainText(/paid back after 4\.8\syears/);
  await expect(years.locator('.years-finding')).toContainText(/is worth 105,810\sUSD more/);
  await openModel(page, 'annual-equivalents', 'Discount factors');
  await name(/Machine bought/);
  await years.getByRole('textbox', { name: /^Interest/ }).fill('8');
  await years.getByLabel('Years looked at').fill('5');
  await years.getByLabel('Still worth at the end').fill('500');
  await expect(years).toContainText(/a loss of 7,418\sUSD\sa\syear \(annual equivalent\)/);
  await expect(years.getByRole('row').nth(5)).toContainText('0.7350');
});

test('breakeven prices of head lettuce, and a pot crop that leaves 4,790', async ({ page }) => {
  const one = region(page, 'Enterprise budget of one plan');
  await openModel(page, 'tunnel-lettuce', 'Head lettuce');
  await ask(page, 'Plans');
  await one.scrollIntoViewIfNeeded();
  const yields = one.getByRole('table').last();
  for (const [row, price] of [
    [1, '2.01'],
    [2, '1.72'],
    [3, '1.53'],
  ] as const) {
    await expect(yields.getByRole('row').nth(row)).toContainText(price);
  }
  await openModel(page, 'geraniums', 'Geraniums');
  await ask(page, 'Plans');
  await one.scrollIntoViewIfNeeded();
  await expect(one).toContainText(
    /leaves 6,553\sUSD\sa\syear over its variable costs and 4,790\sUSD\sa\syear over all costs/,
  );
  await expect(one).toContainText(/At 9,500\splants a year the price must be at least 0\.696/);
});

test('hours of learning stand beside their entries', async ({ page }) => {
  await openModel(page, 'learning-hours', 'Published hours of learning');
  for (const [label, shown] of [
    ['80 %, 300 h: fifth', '178.7'],
    ['70 %, 9 h: third', '5.114'],
    ['Wright, 80 %, 100 h: ninth to sixteenth', '245.8'],
    ['Boats: workers of the eleventh', '104'],
  ] as const) {
    const row = rowOf(page, label);
    await row.scrollIntoViewIfNeeded();
    await expect(row.locator('.value').first()).toContainText(shown);
  }
});

test('timed examples: learning, two ways, losses, odd batches and a standard time', async ({ page }) => {
  await openApp(page);
  await ask(page, 'Timing');
  await openTrials(page, 'learning-units');
  const learning = region(page, 'Learning');
  await learning.getByLabel('Seconds after so many plants').fill('5');
  await expect(learning).toContainText('the seconds to 80 %');
  await expect(learning).toContainText(/After 5 plants: 178\.691\ss each, on which the batches lie/);
  await openTrials(page, 'welch-sleep');
  await expect(region(page, 'Two ways of working')).toContainText(/from −0\.2 to 3\.4 at 95\s% confidence has 0 in it/);
  await openTrials(page, 'wilson-losses');
  await expect(region(page, 'Lost and culled')).toContainText(/31\s%, between 26\s% and 37\s%/);
  await openTrials(page, 'odd-batches');
  await expect(region(page, 'Batches of example').getByText(/^Odd: 1[45]/)).toHaveCount(2);
  await openTrials(page, 'standard-time-mailing');
  await page.getByLabel('allowance for rest and waiting').fill('12');
  await page.getByRole('radio', { name: /^the day/ }).check();
  const row = region(page, 'Each step').getByRole('row', { name: /sealing/ });
  await expect(row).toContainText('1.35');
});
