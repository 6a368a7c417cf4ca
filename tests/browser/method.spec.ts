import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { openApp } from './page';
import { expect, test } from './quietPage';

const method = (page: Page): Locator => page.getByRole('region', { name: 'How it is worked out' });

async function ask(page: Page, question: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: question }).click();
}

test('a figure’s link leads to its method, and back to the link', async ({ page }) => {
  await openApp(page);
  await ask(page, 'How sure');
  const link = page
    .getByRole('region', { name: 'What is worth measuring' })
    .getByRole('button', { name: 'How this is worked out: knowing one', exact: true });
  await link.click();
  await expect(page.getByRole('heading', { name: 'Worth of knowing one entry' })).toBeFocused();
  await expect(page.getByRole('heading', { name: 'Worth of knowing one entry' })).toBeInViewport();
  await method(page).getByRole('button', { name: 'Back to How sure' }).first().click();
  await expect(link).toBeFocused();
  await expect(link).toBeInViewport();
});

test('the foot of the page leads to it too, from the numbers on a phone and back', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 900 });
  await openApp(page);
  await page.getByRole('button', { name: 'How everything is worked out' }).click();
  await expect(page.getByRole('heading', { name: 'How it is worked out' })).toBeFocused();
  await method(page).getByRole('button', { name: 'Whole boards', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Whole boards', exact: true })).toBeFocused();
  await method(page).getByRole('button', { name: 'Back to Numbers' }).last().click();
  await expect(page.getByRole('heading', { name: 'Numbers', exact: true })).toBeVisible();
});

test('beside the numbers it goes back to the question that it took the place of', async ({ page }) => {
  await openApp(page);
  await page.getByRole('button', { name: 'How everything is worked out' }).click();
  await method(page).getByRole('button', { name: 'Back to What matters' }).first().click();
  await expect(page.getByRole('region', { name: 'What matters' })).toBeVisible();
});

test('it comes only when it is asked for', async ({ page }) => {
  const scripts: string[] = [];
  page.on('request', (request) => scripts.push(request.url()));
  await openApp(page);
  expect(scripts.filter((url) => /Method-/.test(url))).toEqual([]);
  await page.getByRole('button', { name: 'How everything is worked out' }).click();
  await expect(method(page)).toBeVisible();
  expect(scripts.filter((url) => /Method-.*\.js$/.test(url))).toHaveLength(1);
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 320]) {
    test(`axe finds nothing at ${width} px, ${colorScheme}`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 900 });
      await openApp(page);
      await page.getByRole('button', { name: 'How everything is worked out' }).click();
      await expect(method(page)).toBeVisible();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))).toEqual([]);
    });
  }
}
