import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { fieldOf, headlineOf, labelOf, openApp, openNursery, rowOf } from './page';
import { expect, test } from './quietPage';

async function violations(page: Page): Promise<string[]> {
  // Axe measures the colours of what is half faded too.
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const { violations: found } = await new AxeBuilder({ page }).analyze();
  return found.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary = '' }) => `${id}: ${html} ${failureSummary}`),
  );
}

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 390]) {
    test(`axe finds nothing at ${width} px, ${colorScheme}`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height: 900 });
      await openNursery(page);
      await fieldOf(page, 'Wage').fill('dear');
      await fieldOf(page, 'Price').fill('50');
      await labelOf(page, 'Margin').click();
      await page.getByText('Change its formula').click();
      expect(await violations(page)).toEqual([]);
    });
  }
}

for (const width of [390, 320]) {
  test(`nothing is wider than ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 700 });
    await openApp(page);
    await labelOf(page, 'Margin').click();
    await page.getByText(/^Made from \d+ inputs/).click();
    await page.getByText('Change its formula').click();
    for (const name of ['What matters', 'Breakeven', 'Numbers']) {
      await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name }).click();
      await expect(page.getByText('Drawing')).toHaveCount(0);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
  });
}

test('by keyboard alone: to the questions, past all the numbers', async ({ page }) => {
  await openNursery(page);
  await page.waitForTimeout(500);
  await page.reload();
  await expect(fieldOf(page, 'Wage')).toBeVisible();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'To the questions' })).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  const questions = page.getByRole('navigation', { name: 'Questions' });
  await expect(questions.getByRole('button').first()).toBeFocused();
});

test('by keyboard alone: to the numbers, a value typed, its mark moved, where it comes from, undone', async ({
  page,
}) => {
  await openNursery(page);
  // The file is kept in a moment; after a reload nothing has the focus.
  await page.waitForTimeout(500);
  await page.reload();
  await expect(fieldOf(page, 'Wage')).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'To the numbers' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Numbers', exact: true })).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.type('wage on-cost');
  const field = fieldOf(page, 'Wage on-cost');
  for (let presses = 0; presses < 10; presses += 1) {
    if (await field.evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await expect(field).toBeFocused();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('22');
  await expect(headlineOf(page, 'Margin')).toContainText('165,838');
  await page.keyboard.press('Tab');
  await expect(rowOf(page, 'Wage on-cost').getByRole('slider')).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await expect(field).toHaveValue('22.5');
  await page.keyboard.press('ControlOrMeta+z');
  await expect(field).toHaveValue('22');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('group', { name: /Where Wage on-cost comes from/ })).toBeVisible();
});

test('what has the focus is not hidden below the headlines', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 700 });
  await openNursery(page);
  await headlineOf(page, 'Margin').getByRole('button').click();
  const label = labelOf(page, 'Margin');
  await expect(label).toBeFocused();
  const [top, covered] = await Promise.all([
    label.evaluate((element) => element.getBoundingClientRect().top),
    page.locator('.headlines').evaluate((element) => element.getBoundingClientRect().bottom),
  ]);
  expect(top).toBeGreaterThanOrEqual(covered);
});

test('a finding that changes is busy until it stands, so that it is not read out at each key', async ({ page }) => {
  await openNursery(page);
  const said = page.locator('.said').first();
  await expect(said).toHaveAttribute('aria-live', 'polite');
  await expect(said).toHaveAttribute('aria-busy', 'false');
  const atOnce = await fieldOf(page, 'Wage').evaluate((field: HTMLInputElement) => {
    field.value = '15';
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    return document.querySelector('.said')!.getAttribute('aria-busy');
  });
  expect(atOnce).toBe('true');
  await expect(said).toHaveAttribute('aria-busy', 'false');
});
