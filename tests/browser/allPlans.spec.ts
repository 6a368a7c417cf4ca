import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { media } from './media';
import { chooseFile, csvFile, fieldOf, openApp, openNursery } from './page';
import { expect, test } from './quietPage';

async function open(page: Page, question: string): Promise<Locator> {
  await openApp(page);
  await chooseFile(page, csvFile('media.csv', media));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('What may a plug cost?');
  return ask(page, question);
}

async function ask(page: Page, question: string): Promise<Locator> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: question }).click();
  const screen = page.getByRole('region', { name: question, exact: true });
  await expect(screen).toBeVisible();
  return screen;
}

const plain = async (place: Locator): Promise<string> => (await place.innerText()).replaceAll('\u00a0', ' ');

// With foam 0.036 + 2.8 s, rockwool 0.03 + 3 s, holder 0.02 + 5.5 s, peat 0.045 + 2.2 s: rockwool and the holder meet
// at 0.01 × 3,600 ÷ 2.5 = 14.40 USD an hour, rockwool and peat at 0.015 × 3,600 ÷ 0.8 = 67.50.
test('breakeven draws every plan, and says which is the best where', async ({ page }) => {
  const screen = await open(page, 'Breakeven');
  await screen.getByLabel('as this input moves').selectOption('Wage');
  const answer = screen.locator('.finding').first();
  await expect
    .poll(() => plain(answer))
    .toBe(
      'Below 14.40 USD an hour, Holder has the highest Margin; from there to 67.50 USD an hour, Rockwool; from there on, Peat.',
    );
  await expect(screen.locator('.plan-key li')).toHaveText([/^A\s*Foam/, /^C\s*Rockwool/, /^D\s*Holder/, /^B\s*Peat/]);
  await screen.getByText('The same numbers as tables').click();
  const where = screen.getByRole('region', { name: 'Which plan is the best where' });
  await expect(where).toContainText('Which plan has the highest Margin');
  await expect(where).not.toContainText('being worked out');
  await expect(where.getByRole('row')).toContainText(['plan', 'D Holder', 'C Rockwool', 'B Peat']);
});

test('axe finds nothing on breakeven of all plans', async ({ page }) => {
  const screen = await open(page, 'Breakeven');
  await expect(screen.locator('.plan-key li')).toHaveCount(4);
  const { violations } = await new AxeBuilder({ page }).include('.breakeven').analyze();
  expect(violations).toEqual([]);
});

test('breakeven moves with a keystroke, and shows two plans where they are asked for', async ({ page }) => {
  const screen = await open(page, 'Breakeven');
  await screen.getByLabel('as this input moves').selectOption('Wage');
  await fieldOf(page, 'Set rockwool').fill('5.5');
  const answer = screen.locator('.finding').first();
  await expect.poll(() => plain(answer)).toContain('Holder has the highest Margin; from there to');
  await screen.getByRole('radio', { name: 'A and B' }).check();
  await expect.poll(() => plain(answer)).toContain('Peat');
  await expect(screen.locator('.plan-key')).toHaveCount(0);
  await screen.getByRole('radio', { name: 'all plans' }).check();
  await expect(screen.locator('.plan-key li')).toHaveCount(4);
});

test('how sure tells in how many draws each plan is the best of all', async ({ page }) => {
  const screen = await open(page, 'How sure');
  const part = screen.getByRole('region', { name: 'Which plan is the best of all' });
  await part.scrollIntoViewIfNeeded();
  await expect(part).toContainText(/Of all 4 plans \w+ has the highest Margin in \d+ of 100 draws, /);
  const shares = part.getByRole('row').locator('td:nth-child(2)');
  await expect(shares).toHaveCount(4);
  const sum = (await shares.allInnerTexts()).map(Number).reduce((total, share) => total + share, 0);
  expect(Math.abs(sum - 100)).toBeLessThan(0.3);
});

test('what matters sets the costs of all plans side by side', async ({ page }) => {
  const screen = await open(page, 'What matters');
  const part = screen.getByRole('region', { name: 'Costs in every plan', exact: true });
  await part.scrollIntoViewIfNeeded();
  await expect(part).toContainText('Rockwool spends the least');
  await expect(part.getByRole('row', { name: /^together/ }).getByRole('cell')).toHaveText([
    '0.0500',
    /0\.0450/,
    '0.0475',
    '0.0560',
  ]);
});

test('the case and the headlines name a plan that does better than both', async ({ page }) => {
  const screen = await open(page, 'The case');
  await expect
    .poll(() => plain(screen.locator('.other-best')))
    .toBe('Plan C, Rockwool, has the highest Margin of all: 35,500 USD a year.');
  await expect(screen).toContainText('Margin in the other plans: C, Rockwool');
  const line = page.locator('.best-beyond');
  await expect.poll(() => plain(line)).toBe('Plan C, Rockwool, has the highest Margin of all: 35,500 USD a year.');
  await page.getByRole('combobox', { name: 'Plan B' }).selectOption('Rockwool');
  await expect(line).toHaveCount(0);
  await expect(screen.locator('.other-best')).toHaveCount(0);
});

test('a model of two plans says nothing of a third', async ({ page }) => {
  await openNursery(page);
  const breakeven = await ask(page, 'Breakeven');
  await expect(breakeven.getByRole('radio')).toHaveCount(2);
  await expect(breakeven.getByRole('radio', { name: 'both plans' })).toBeChecked();
  const sure = await ask(page, 'How sure');
  await expect(sure.locator('.finding').first()).toBeVisible();
  await expect(sure.getByText('of all')).toHaveCount(0);
  await expect(page.locator('.best-beyond')).toHaveCount(0);
});
