import type { Locator, Page } from '@playwright/test';
import { chooseFile, csvFile, fieldOf, openApp } from './page';
import { expect, test } from './quietPage';

/**
 * A machine for cuttings of 125,000 $ that saves 29,891 $ a year, Scientia Horticulturae (2019); see
 * tests/reference/overYears.test.ts.
 */
const machine = [
  'name,label,unit,formula,low,high,group,role,budget,plan: By hand,plan: By machine',
  ',Does a machine pay? A published example,,,,,,,,,',
  'machine,Machine bought,USD,0,,,Once,,,0,125000',
  'saving,Hands saved,USD/year,29891,20000,40000,Hands,,,,',
  'hands,Hands,USD/year,saving,,,Money,,cost,,0',
  'sold,Cuttings,plant/year,7200000,,,Money,,,,',
  'price,Price,USD/plant,0.05,,,Money,,,,',
  'sales,Sales,USD/year,sold * price,,,Money,headline,return,,',
  '',
].join('\n');

const part = (page: Page): Locator =>
  page.getByRole('region', { name: 'What does the outlay bring over the years?', exact: true });
const finding = (page: Page): Locator => part(page).locator('.years-finding');

async function ask(page: Page, question: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: question }).click();
}

async function open(page: Page): Promise<void> {
  await openApp(page);
  await chooseFile(page, csvFile('machine.csv', machine));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('machine');
  await ask(page, 'The case');
  await part(page).scrollIntoViewIfNeeded();
}

test('an entry named as outlay is paid back as published, with the odds of the draws', async ({ page }) => {
  await open(page);
  await expect(part(page)).toContainText('give what the change costs once');
  await part(page).getByRole('radio', { name: 'entries of this model' }).check();
  await part(page)
    .getByRole('checkbox', { name: /Machine bought/ })
    .check();
  // 105,807 $ is printed; the 3 $ are the rounding of the saving.
  await expect(finding(page)).toContainText(
    /an outlay of 125,000\sUSD that brings 29,891\sUSD\sa\syear is paid back after 4\.8\syears, at 5\s%\sa year/,
  );
  await expect(finding(page)).toContainText(/Over 10\syears it is worth 105,810\sUSD more today than it costs/);
  await expect(part(page)).toContainText(/a gain of 13,703\sUSD\sa\syear \(annual equivalent\)/);
  // 125,000 ÷ 7.72173 is 16,188: below the lowest saving drawn.
  await expect(finding(page)).toContainText('It pays over the years: in every draw');
  const rows = part(page).getByRole('row');
  await expect(rows).toHaveCount(12);
  await expect(rows.nth(5)).toHaveText(/^4\s*gain of the year\s*29,891\s*0\.8227\s*24,591\s*−19,008$/);
  await fieldOf(page, 'Hands saved').fill('20000');
  await expect(finding(page)).toContainText(/that brings 20,000\sUSD\sa\syear is paid back after 7\.7\syears/);
});

test('what cannot be used is refused with a sentence, and outlay 0 is said', async ({ page }) => {
  await open(page);
  const years = part(page).getByLabel('Years looked at');
  await years.fill('0');
  await expect(part(page)).toContainText('no whole number from 1 to 100: 0. Enter one.');
  await years.fill('10');
  const rate = part(page).getByRole('textbox', { name: /^Interest/ });
  await rate.fill('-100');
  await expect(part(page)).toContainText('no rate above −100 % a year: -100.');
  const outlay = part(page).getByLabel('Outlay, paid once');
  await outlay.fill('0');
  await rate.fill('0');
  await expect(finding(page)).toContainText(
    /there is no outlay, so it is paid back at once: over 10\syears without interest/,
  );
  await rate.fill('-1');
  await expect(part(page)).toContainText('At a rate below 0 money that comes later counts for more than money today.');
  await part(page).getByRole('button', { name: 'Leave the outlay out' }).click();
  await expect(finding(page)).toHaveCount(0);
  await expect(outlay).toHaveValue('');
});

test('it is kept, and on paper only with an outlay', async ({ page }) => {
  await open(page);
  await page.emulateMedia({ media: 'print' });
  await expect(part(page)).toBeHidden();
  await page.emulateMedia({ media: 'screen' });
  await part(page).getByLabel('Outlay, paid once').fill('50000');
  await expect(finding(page)).toContainText(/an outlay of 50,000\sUSD/);
  await page.emulateMedia({ media: 'print' });
  await expect(finding(page)).toBeVisible();
  await expect(part(page).getByLabel('Outlay, paid once')).toBeHidden();
  await page.emulateMedia({ media: 'screen' });
  await page.waitForTimeout(300);
  await page.reload();
  await ask(page, 'The case');
  await expect(finding(page)).toContainText(/an outlay of 50,000\sUSD/);
});

test('one plan has its enterprise budget, with the price and the plants that it needs', async ({ page }) => {
  await open(page);
  await ask(page, 'Plans');
  const one = page.getByRole('region', { name: 'Enterprise budget of one plan', exact: true });
  await one.scrollIntoViewIfNeeded();
  await one.getByRole('combobox', { name: 'Of plan' }).selectOption('By hand');
  // 29,891 ÷ 7,200,000 is 0.00415; 29,891 ÷ 0.05 is 597,820.
  await expect(one).toContainText(
    /At 7,200,000\splants a year the price must be at least 0\.00415\sUSD\sper\splant; at today’s price of 0\.0500\sUSD\sper\splant, 597,820\splants are enough/,
  );
  await one.getByRole('button', { name: 'Hands', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Hands', exact: true }).first()).toBeVisible();
});
