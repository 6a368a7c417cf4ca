import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { hire, pole } from './hire';
import { chooseFile, csvFile, fieldOf, openApp, rowOf } from './page';
import { expect, test } from './quietPage';

const screen = (page: Page): Locator => page.getByRole('region', { name: 'How sure' });
const finding = (page: Page): Locator => screen(page).locator('.said').first();
const field = (page: Page, name: string): Locator => screen(page).getByRole('textbox', { name });

async function ask(page: Page, question: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: question }).click();
}

async function open(page: Page, model = hire): Promise<void> {
  await openApp(page);
  await chooseFile(page, csvFile('made-up.csv', model));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('made-up', { ignoreCase: true });
  await ask(page, 'How sure');
}

test('the odds are said and drawn, and the seed repeats them', async ({ page }) => {
  await open(page);
  await expect(screen(page)).toContainText('100,000 draws made.');
  await expect(finding(page)).toContainText(
    /With a hire pays in \d+ of 100 draws; the difference in Margin lies between .+EUR\sa\syear in 90 of 100\./,
  );
  await expect(screen(page).getByRole('img')).toHaveAccessibleName(/^With a hire pays in/);
  const average = finding(page).locator('p', { hasText: 'On average' });
  const first = await average.textContent();
  await field(page, 'start number').fill('0');
  await expect(average).not.toHaveText(first!);
  await field(page, 'start number').fill('1');
  await expect(average).toHaveText(first!);
});

test('an edit draws again', async ({ page }) => {
  await open(page);
  await expect(finding(page)).toContainText(/pays in (?:9\d|more than 99) of 100 draws/);
  // Without plants to move, the hire is only the heads that it brings.
  await rowOf(page, 'Plants moved by the hire').getByRole('textbox').last().fill('0');
  await expect(finding(page)).toContainText('pays in every draw');
});

test('a number can be typed key by key, through texts that write the number that stands', async ({ page }) => {
  await open(page);
  const above = field(page, 'above');
  await above.fill('');
  await above.pressSequentially('-0.05');
  await expect(above).toHaveValue('-0.05');
  await above.fill('');
  await above.pressSequentially('1.05');
  await expect(above).toHaveValue('1.05');
});

test('one plan stands over the other, with letters, and the curve adds up', async ({ page }) => {
  await open(page);
  await screen(page).getByRole('radio', { name: 'A Today' }).check();
  await expect(finding(page)).toContainText('Margin in Today is above 0 in every draw');
  await expect(screen(page).locator('.key-set')).toHaveText([/A Today/, /B With a hire/]);
  await screen(page).getByRole('radio', { name: 'added up' }).check();
  await expect(screen(page)).toContainText('share of draws below');
  await screen(page).getByText('The same numbers as tables').click();
  await expect(screen(page).getByRole('row', { name: /^draws that could be computed/ })).toHaveText(
    /100,000\s*100,000/,
  );
});

test('what drives the spread leads to its entry', async ({ page }) => {
  await open(page);
  const drivers = screen(page).getByRole('region', { name: 'Which guesses drive the spread' });
  await expect(drivers).toContainText('drives the spread most');
  await drivers.getByRole('button', { name: 'Wage' }).click();
  await expect(fieldOf(page, 'Wage')).toBeFocused();
  await expect(screen(page).getByRole('region', { name: 'What is worth measuring' })).toContainText('worth');
});

test('many draws show how far they are, stop, and start again', async ({ page }) => {
  await open(page);
  await field(page, 'draws').fill('10,000,000');
  await expect(screen(page).getByRole('progressbar')).toBeVisible();
  await screen(page).getByRole('button', { name: 'Stop' }).click();
  await expect(screen(page)).toContainText(/Stopped after [\d,]+ draws/);
  await field(page, 'draws').fill('ten');
  await expect(screen(page)).toContainText('not a number: ten');
  await field(page, 'draws').fill('2,000');
  await expect(screen(page)).toContainText('2,000 draws made.');
});

test('one draw, no range and no result today are told as such', async ({ page }) => {
  await open(page);
  await field(page, 'draws').fill('1');
  await expect(finding(page)).toContainText('One draw says nothing of how sure it is');
  await chooseFile(page, csvFile('pole.csv', pole.replace('5,3,8', '5,,')));
  await expect(screen(page)).toContainText('No entry with a range touches Turns');
  await fieldOf(page, 'Gap').fill('2');
  await expect(screen(page)).toContainText('Turns cannot be computed today');
});

test('a number outside its range, and a shape round another number, are said', async ({ page }) => {
  await open(page, hire.replace('15,12,20,normal', '13,12,20,normal'));
  await expect(screen(page)).toContainText('Wage is drawn round 16.00 EUR an hour, not round today’s 13');
  await fieldOf(page, 'Move a plant').fill('25');
  await expect(screen(page)).toContainText(
    'Move a plant stands outside its range today, and the draws keep to the range',
  );
});

// 20,000 heads at 0.50 EUR are 10,000 EUR; moving them costs 6,000 EUR, so it flips at 25 EUR/h and 20 s.
test('what matters says how wrong a guess may be', async ({ page }) => {
  await open(page);
  await ask(page, 'What matters');
  const switching = page.getByRole('region', { name: 'How wrong a guess may be' });
  // What is drawn above it once it is there may push it out of sight again, where nothing is searched for it.
  await expect(async () => {
    await switching.scrollIntoViewIfNeeded();
    await expect(switching.getByRole('row', { name: /^Wage/ })).toHaveText(/15\sEUR\/h\s*25\sEUR\/h\s*\+67\s%/, {
      timeout: 2000,
    });
  }).toPass({ timeout: 20_000 });
  await expect(switching.getByRole('row', { name: /^Price of a head/ })).toHaveText(/0\.3\sEUR\/plant\s*−40\s%/);
  await switching.getByRole('button', { name: 'Wage' }).click();
  await expect(fieldOf(page, 'Wage')).toBeFocused();
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 320]) {
    test(`axe finds nothing at ${width} px, ${colorScheme}`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 900 });
      await open(page);
      await expect(screen(page)).toContainText('drives the spread most');
      await screen(page).getByRole('radio', { name: 'B With a hire' }).check();
      await screen(page).getByText('The same numbers as tables').click();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))).toEqual([]);
    });
  }
}
