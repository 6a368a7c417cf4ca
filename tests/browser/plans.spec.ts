import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { margins } from './nursery';
import { pole } from './hire';
import { chooseFile, csvFile, fieldOf, headlineOf, openApp, openNursery, savedFile } from './page';
import { expect, test } from './quietPage';

const questions = (page: Page): Locator => page.getByRole('navigation', { name: 'Questions' });
const screen = (page: Page): Locator => page.getByRole('region', { name: 'Plans', exact: true });
const part = (page: Page, name: string): Locator => screen(page).getByRole('region', { name, exact: true });
const press = (page: Page, name: string): Promise<void> =>
  screen(page).getByRole('button', { name, exact: true }).click();
const list = (page: Page): Locator => part(page, 'The plans of this model').locator('.plan-name');
const table = (page: Page): Locator => part(page, 'Side by side').getByRole('table');
const ownNumber = (page: Page): Locator => part(page, 'Change one thing in one plan').getByRole('textbox');

async function showPlans(page: Page): Promise<void> {
  await questions(page).getByRole('button', { name: 'Plans' }).click();
  await expect(screen(page)).toBeVisible();
}

async function openPlans(page: Page): Promise<void> {
  await openNursery(page);
  await showPlans(page);
}

/** A copy of a plan under a name. */
async function copy(page: Page, plan: string, name: string): Promise<void> {
  await press(page, `Copy ${plan}`);
  await screen(page).getByLabel('Name of the copy').fill(name);
  await press(page, 'Make the copy');
}

async function savedText(page: Page): Promise<string> {
  return (await savedFile(page)).bytes.toString('utf8');
}

test('two plans that are swapped stay so when the page is loaded again', async ({ page }) => {
  await openPlans(page);
  const heads = page.locator('.plan-head .plan-name');
  const swapped = ['Nursery first', 'Straight'];
  await expect(heads).toContainText(['Straight', 'Nursery first']);
  await screen(page).locator('.compare-two select').first().selectOption('Nursery first');
  await expect(heads).toContainText(swapped);
  await page.waitForTimeout(300);
  await page.reload();
  await expect(screen(page)).toBeVisible();
  await expect(heads).toContainText(swapped);
});

test('a plan is added, renamed, changed alone, compared, removed and brought back', async ({ page }) => {
  await openPlans(page);
  await expect(screen(page).locator('.finding')).toHaveText(
    `Margin is highest in Nursery first: ${margins.nursery} EUR a year, 25,660 EUR a year more than in Straight, the reference.`,
  );
  await press(page, 'Copy Nursery first');
  const name = screen(page).getByLabel('Name of the copy');
  await expect(name).toBeFocused();
  await expect(name).toHaveValue('Nursery first 2');
  await name.press('Enter');
  await expect(list(page)).toHaveText(['Straight', 'Nursery first', 'Nursery first 2']);
  await press(page, 'Rename Nursery first 2');
  await screen(page).getByLabel('Its new name').fill('Quick hands');
  await screen(page).getByLabel('Its new name').press('Enter');
  await expect(list(page)).toHaveText(['Straight', 'Nursery first', 'Quick hands']);

  // 6 s a plant: hands 6,670, half of 13,340, so the margin is 179,400 − 6,670.
  await part(page, 'Change one thing in one plan')
    .getByRole('combobox', { name: 'Change' })
    .selectOption('Move a plant');
  await expect(part(page, 'Change one thing in one plan').getByRole('combobox', { name: 'in plan' })).toHaveValue(
    'Quick hands',
  );
  await expect(ownNumber(page)).toHaveAccessibleName('Move a plant, s/plant, own number of plan Quick hands');
  await expect(ownNumber(page)).toHaveValue('12');
  await ownNumber(page).fill('6');
  const margin = table(page).getByRole('row', { name: /^Margin/ });
  await expect(margin.locator('.plan-value')).toHaveText([margins.straight, margins.nursery, '172,730']);
  await expect(margin.getByRole('cell').nth(2)).toContainText('most');
  await expect(margin.getByRole('cell').nth(2)).toContainText('+32,330');
  // The copy was compared with its plan at once, and is so under its new name.
  await expect(headlineOf(page, 'Margin')).toContainText('+6,670');
  const differences = part(page, 'What differs').getByRole('table');
  await expect(differences.getByRole('row', { name: /Move a plant/ }).getByRole('cell')).toHaveText([
    '12',
    '6',
    's/plant',
  ]);
  expect(await savedText(page)).toMatch(/,plan: Nursery first,plan: Quick hands\r?\n/);

  const compare = part(page, 'Compare two of them');
  await compare.getByRole('combobox', { name: 'Compare A' }).selectOption('Straight');
  await expect(headlineOf(page, 'Margin')).toContainText('+32,330');
  await press(page, 'Remove Quick hands');
  await expect(list(page)).toHaveText(['Straight', 'Nursery first']);
  expect(await savedText(page)).not.toContain('Quick hands');
  const back = screen(page).getByRole('button', { name: 'Take it back' });
  await press(page, 'Take it back');
  await expect(back).toHaveCount(0);
  await expect(list(page)).toHaveText(['Straight', 'Nursery first', 'Quick hands']);
  expect(await savedText(page)).toContain('Quick hands');
});

test('a number of one plan is given up for the shared one, and undone key by key with the usual keys', async ({
  page,
}) => {
  await openPlans(page);
  const one = part(page, 'Change one thing in one plan');
  await one.getByRole('combobox', { name: 'Change' }).selectOption('Wage');
  await expect(one).toContainText('Shared by the plans: 14.5 EUR/h');
  await ownNumber(page).fill('20');
  await expect(one).toContainText('Nursery first has this number alone.');
  await expect(fieldOf(page, 'Wage')).toHaveValue('14.5');
  expect(await savedText(page)).toMatch(/\nwage,.*,entered \d+ \w+ \d{4},,20\r?\n/);
  await one.getByRole('button', { name: 'Use the shared number again' }).click();
  await expect(ownNumber(page)).toBeFocused();
  await expect(ownNumber(page)).toHaveValue('14.5');
  await expect(one).toContainText('Wage is shared again in Nursery first.');
  await one.getByRole('button', { name: 'Take it back' }).click();
  await expect(ownNumber(page)).toHaveValue('20');
  await ownNumber(page).press('Control+z');
  await expect(ownNumber(page)).toHaveValue('14.5');
  await ownNumber(page).fill('dear');
  await expect(ownNumber(page)).toHaveAccessibleDescription(/not a number: dear\. .* 14\.5 stands\./);
  await showPlans(page);
  await questions(page)
    .getByRole('button', { name: 'Beds' })
    .or(questions(page).getByRole('button', { name: 'Timing' }))
    .first()
    .click();
  await showPlans(page);
  await expect(ownNumber(page)).toHaveValue('dear');
});

test('a name that is taken is told under its field and stays there, over a reload too', async ({ page }) => {
  await openPlans(page);
  await press(page, 'Rename Nursery first');
  const name = screen(page).getByLabel('Its new name');
  await name.fill('Straight');
  await expect(name).toHaveAccessibleDescription(/plan named twice: Straight/);
  await name.press('Enter');
  await expect(name).toHaveValue('Straight');
  await page.waitForTimeout(600);
  await page.reload();
  await expect(name).toHaveValue('Straight');
  await name.press('Escape');
  await expect(name).toHaveCount(0);
  await expect(screen(page).getByRole('button', { name: 'Rename Nursery first' })).toBeFocused();
});

test('by keyboard: a plan is moved to the front and is the reference, its button still in hand', async ({ page }) => {
  await openPlans(page);
  const earlier = screen(page).getByRole('button', { name: 'Earlier Nursery first' });
  await earlier.focus();
  await page.keyboard.press('Enter');
  await expect(list(page)).toHaveText(['Nursery first', 'Straight']);
  await expect(screen(page)).toContainText('Nursery first is the reference now.');
  await expect(earlier).toBeFocused();
  await expect(earlier).toHaveAttribute('aria-disabled', 'true');
  await screen(page).getByRole('button', { name: 'Remove Straight' }).focus();
  await page.keyboard.press('Enter');
  await expect(screen(page).getByRole('button', { name: 'Take it back' })).toBeFocused();
  await expect(screen(page).getByRole('button', { name: /^Remove/ })).toHaveCount(0);
});

test('a copy of the only plan, which has no name, names both', async ({ page }) => {
  await openApp(page);
  await chooseFile(page, csvFile('pole.csv', pole));
  await showPlans(page);
  await expect(list(page)).toHaveText(['The only plan, without a name so far']);
  await screen(page).getByRole('button', { name: /^Copy/ }).click();
  await expect(screen(page).getByLabel('Name of the plan as it is now')).toBeFocused();
  await page.keyboard.type('Narrow');
  await screen(page).getByLabel('Name of the copy').fill('Wide');
  await page.keyboard.press('Enter');
  await expect(list(page)).toHaveText(['Narrow', 'Wide']);
  expect(await savedText(page)).toContain('plan: Narrow,plan: Wide');
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 390]) {
    test(`twelve plans move in their own frame, and axe finds nothing, ${width} px, ${colorScheme}`, async ({
      page,
    }) => {
      test.slow();
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 900 });
      await openPlans(page);
      for (let plan = 3; plan <= 12; plan += 1) await copy(page, 'Nursery first', `Plan ${plan}`);
      await press(page, 'Rename Straight');
      await screen(page).getByLabel('Its new name').fill('');
      await ownNumber(page).fill('dear');
      await expect(list(page)).toHaveCount(12);
      await expect(screen(page).locator('canvas')).toHaveCount(2);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      const small = await screen(page)
        .locator('button, select, input')
        .evaluateAll((all) =>
          all
            .filter((one) => one.closest('td, th, p:not(.plan-buttons, .own-shared)') === null)
            .map((one) => ({ text: one.textContent, high: one.getBoundingClientRect().height }))
            .filter(({ high }) => high < 24),
        );
      expect(small).toEqual([]);
      const { violations } = await new AxeBuilder({ page }).include('.plans').analyze();
      expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))).toEqual([]);
    });
  }
}

test('the table and the pictures print, without what can be pressed', async ({ page }) => {
  await openPlans(page);
  for (let plan = 3; plan <= 12; plan += 1) await copy(page, 'Nursery first', `Plan ${plan}`);
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 680, height: 1000 });
  await expect(table(page)).toBeVisible();
  await expect(screen(page).getByRole('img').first()).toBeVisible();
  await expect(part(page, 'What differs').getByRole('table')).toBeVisible();
  await expect(screen(page).getByRole('button', { name: 'Copy Straight' })).toBeHidden();
  await expect(part(page, 'Change one thing in one plan')).toBeHidden();
  const right = await table(page).evaluate((element) => element.getBoundingClientRect().right);
  expect(right).toBeLessThanOrEqual(680);
});
