import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { chooseFile, csvFile, fieldOf, openApp, rowOf } from './page';
import { expect, test } from './quietPage';

/** 200,000 plugs a year at 0.03 EUR are 6,000 EUR a year. */
const shop = [
  'name,label,unit,formula,low,high,group,role',
  ',What does the seller’s list say? Made up,,,,,,',
  'bought,Plugs a year,plug/year,200000,100000,400000,Plugs,',
  'price,Price of a plug,EUR/plug,0.03,0.02,0.04,Plugs,',
  'year,Plugs in a year,EUR/year,bought * price,,,Money,headline',
  '',
].join('\n');

async function open(page: Page): Promise<void> {
  await openApp(page);
  await chooseFile(page, csvFile('shop.csv', shop));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('What does the seller');
  await page.getByRole('button', { name: 'Price by quantity' }).click();
  await page.getByLabel('Which price').selectOption('Price of a plug, EUR/plug');
}

async function fill(page: Page, step: number, from: string, price: string): Promise<void> {
  await page.getByLabel(`Step ${step}: from, plug/year`, { exact: true }).fill(from);
  await page
    .getByLabel('price from there, EUR/plug')
    .nth(step - 2)
    .fill(price);
}

test('a price goes by quantity in as many steps as the seller has', async ({ page }) => {
  await open(page);
  await expect(page.getByLabel('Price to begin with, EUR/plug')).toHaveValue('0.03');
  await expect(page.getByLabel('Counted by what is bought')).toHaveValue('bought');
  await fill(page, 2, '100,000', '0.028');
  for (const [step, from, price] of [
    [3, '150000', '0.026'],
    [4, '250000', '0.024'],
    [5, '350000', '0.02'],
  ] as const) {
    await page.getByRole('button', { name: 'Add a step' }).click();
    await expect(page.getByLabel(`Step ${step}: from, plug/year`, { exact: true })).toBeFocused();
    await fill(page, step, from, price);
  }
  const { violations } = await new AxeBuilder({ page }).include('.own-form').analyze();
  expect(violations).toEqual([]);
  await page.getByRole('button', { name: 'Take step 5 away' }).click();
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(page.locator('.said-line')).toContainText('Price of a plug goes by quantity now, with 4 prices.');
  const total = page.locator('.headline').filter({ hasText: 'Plugs in a year' });
  await expect(total).toContainText('5,200');
  await fieldOf(page, 'Plugs a year').fill('250000');
  await expect(total).toContainText('6,000');
  await fieldOf(page, 'Price of a plug, step 4: price').fill('0.022');
  await expect(total).toContainText('5,500');
});

test('steps that do not rise are told at their field, and later by a warning', async ({ page }) => {
  await open(page);
  await fill(page, 2, '150000', '0.026');
  await page.getByRole('button', { name: 'Add a step' }).click();
  await fill(page, 3, '100000', '0.024');
  await page.getByRole('button', { name: 'Add it' }).click();
  const third = page.getByLabel('Step 3: from, plug/year', { exact: true });
  await expect(third).toHaveAttribute('aria-invalid', 'true');
  await expect(third).toHaveAccessibleDescription(/not rising: 100,000 after 150,000/);
  await third.fill('250000');
  await page.getByRole('button', { name: 'Add it' }).click();
  await fieldOf(page, 'Price of a plug, step 3: from').fill('120000');
  await expect(page.locator('.failing')).toContainText('The steps of Price of a plug do not rise');
});

test('asked again the form shows the steps, and takes one away with its entries', async ({ page }) => {
  await open(page);
  await fill(page, 2, '150000', '0.026');
  await page.getByRole('button', { name: 'Add a step' }).click();
  await fill(page, 3, '250000', '0.024');
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(rowOf(page, 'Price of a plug, step 3: price')).toHaveCount(1);
  await page.getByRole('button', { name: 'Price by quantity' }).click();
  await page.getByLabel('Which price').selectOption('Price of a plug, EUR/plug');
  await expect(page.getByLabel('Step 3: from, plug/year', { exact: true })).toHaveValue('250,000');
  await page.getByRole('button', { name: 'Take step 3 away' }).click();
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(rowOf(page, 'Price of a plug, step 3: price')).toHaveCount(0);
  await expect(page.locator('.headline').filter({ hasText: 'Plugs in a year' })).toContainText('5,200');
});

test('breakeven finds the step as a jump', async ({ page }) => {
  await open(page);
  await fill(page, 2, '300000', '0.015');
  await page.getByRole('button', { name: 'Add it' }).click();
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'Breakeven' }).click();
  const screen = page.getByRole('region', { name: 'Breakeven' });
  await screen.getByLabel('Result').selectOption('Price of a plug');
  await screen.getByLabel('as this input moves').selectOption('Plugs a year');
  await screen.getByRole('textbox', { name: 'target' }).fill('0.02');
  await expect(screen.locator('.finding').first()).toHaveText(
    'Below 300,000 plugs a year, Price of a plug is at least 0.0200 EUR per plug; above, it is less.',
  );
});
