import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { hire, pole } from './hire';
import { chooseFile, csvFile, fieldOf, openApp } from './page';
import { expect, test } from './quietPage';
import { choicesAfter, savedLines } from './takingOut';

const screen = (page: Page): Locator => page.getByRole('region', { name: 'Breakeven' });
const part = (page: Page): Locator => screen(page).getByRole('region', { name: 'Two inputs at once' });
const finding = (page: Page): Locator => part(page).locator('.heat-said');

async function open(page: Page, model = hire): Promise<void> {
  await openApp(page);
  await chooseFile(page, csvFile('made-up.csv', model));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('made-up', { ignoreCase: true });
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'Breakeven' }).click();
  await part(page).scrollIntoViewIfNeeded();
}

// 20,000 heads more at 0.50 EUR are 10,000 EUR a year; 120,000 plants moved at 15 EUR/h and 20 s each cost as much.
// At 12 EUR/h that is 25 s, beyond the range of 9 to 19; at 20 EUR/h it is 15 s.
const says =
  'How far Move a plant may go depends on Wage: at 12.00 EUR an hour, With a hire pays throughout; ' +
  'at today’s 15.00 EUR an hour, throughout; at 20.00 EUR an hour, up to 15 s per plant.';

test('what two inputs do together is said, drawn and named for those who do not see it', async ({ page }) => {
  await open(page);
  await expect(finding(page)).toContainText(says);
  await expect(finding(page)).toContainText(
    'Today, at 12 s per plant and 15.00 EUR an hour, the difference in Margin is 4,000 EUR a year.',
  );
  await expect(part(page).getByRole('img', { name: says.slice(0, 40) })).toBeVisible();
});

test('the second input can be chosen, and stays chosen', async ({ page }) => {
  await open(page);
  await part(page)
    .getByRole('combobox', { name: 'as Move a plant moves, and with it' })
    .selectOption({ label: 'Price of a head' });
  // At 0.40 EUR the added heads bring 8,000 EUR: 16 s. At 0.60 EUR 12,000: 24 s.
  await expect(finding(page)).toContainText('at 0.400 EUR per plant, With a hire pays up to 16 s per plant;');
  await expect(finding(page)).toContainText('at 0.600 EUR per plant, throughout.');
  await expect(page.getByText('Kept on this machine')).toBeVisible();
  await page.reload();
  await part(page).scrollIntoViewIfNeeded();
  await expect(finding(page)).toContainText('at 0.400 EUR per plant, With a hire pays up to 16 s per plant;');
});

test('a keystroke draws it anew, and the target moves the line', async ({ page }) => {
  await open(page);
  await expect(finding(page)).toContainText(says);
  await fieldOf(page, 'Wage').fill('18');
  await expect(finding(page)).toContainText('at today’s 18.00 EUR an hour, up to 16.67 s per plant');
  await screen(page).getByRole('radio', { name: 'difference B − A' }).check();
  await screen(page).getByRole('textbox', { name: 'target' }).fill('1000');
  await part(page).scrollIntoViewIfNeeded();
  await expect(finding(page)).toContainText('the difference in Margin is at least 1,000 EUR a year throughout');
  await expect(finding(page)).toContainText('at today’s 18.00 EUR an hour, up to 15 s per plant');
});

test('the table has the same numbers, exactly and as a file', async ({ page }) => {
  await open(page);
  await part(page).getByText('The same numbers as a table').click();
  const table = part(page).getByRole('table');
  await expect(table.getByRole('columnheader', { name: '12 today' })).toBeVisible();
  const dearest = table.getByRole('row').filter({ has: page.getByRole('rowheader', { name: '20', exact: true }) });
  // 10,000 − 120,000 × 19 × 20 ÷ 3,600 = −2,666.67
  await expect(dearest.getByRole('cell').last()).toHaveText('▼ −2,667');
  await expect(dearest.getByRole('cell').last().getByRole('img', { name: 'below 0' })).toBeVisible();
  await expect(dearest.getByRole('cell').first()).toHaveText('4,000');
  const { name, lines } = await savedLines(page, table);
  expect(name).toBe('Does a hire pay - The difference in Margin, EUR year.csv');
  const [head, first] = lines;
  expect(head).toContain('"Wage, EUR/h down, Move a plant, s/plant across",9,');
  expect(first).toMatch(/^20,4000,.*,-2666\.66666666666666666666666666667$/);
});

test('a model with one input has nothing to look at together', async ({ page }) => {
  await open(page, pole);
  await expect(part(page)).toContainText('There is no second input that moves Turns.');
});

test('a part that cannot be computed is crossed out and said', async ({ page }) => {
  await open(
    page,
    pole
      .replace('gap,Gap,,5,3,8,Beds,', 'gap,Gap,,5,3,8,Beds,\nless,Less,,4,2,6,Beds,')
      .replace('gap - 2', 'sqrt(gap - less)'),
  );
  await expect(finding(page)).toContainText('of the picture it cannot be computed; that part is crossed out.');
  await expect(part(page).getByText('cannot be computed', { exact: true })).toBeVisible();
});

for (const [width, colorScheme] of [
  [1440, 'light'],
  [390, 'dark'],
  [320, 'light'],
] as const) {
  test(`axe finds nothing at ${width} px, ${colorScheme}, and nothing runs out of the page`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await open(page);
    await expect(finding(page)).toContainText('How far Move a plant may go');
    await part(page).getByText('The same numbers as a table').click();
    const choices = choicesAfter(part(page).getByRole('table'));
    await choices.locator('summary').click();
    await expect(choices.getByRole('button', { name: 'Save it as CSV' })).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).include('.two-way').analyze();
    expect(violations).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  });
}

test('of a model that has been closed nothing stays in sight', async ({ page }) => {
  await open(page);
  await expect(finding(page)).toContainText(says);
  await chooseFile(page, csvFile('other.csv', pole));
  await expect(part(page)).toContainText('There is no second input that moves Turns.');
  await expect(finding(page)).toHaveCount(0);
});
