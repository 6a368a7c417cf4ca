import type { Locator, Page } from '@playwright/test';
import { headlineOf, openApp } from './page';
import { own } from './ownAnswers';
import { expect, test } from './quietPage';

/** The most that a grower should have to do between opening the app and the paper. */
const mostActions = 40;

/** Does things and counts them: a press, or a field filled. */
function counted(page: Page): {
  readonly press: (button: Locator) => Promise<void>;
  readonly fill: (label: string, text: string) => Promise<void>;
  readonly tick: (box: Locator, on: boolean) => Promise<void>;
  readonly count: () => number;
} {
  let actions = 0;
  return {
    press: async (button) => {
      actions += 1;
      await button.click();
    },
    fill: async (label, text) => {
      actions += 1;
      await page.getByLabel(label, { exact: true }).fill(text);
    },
    tick: async (box, on) => {
      actions += 1;
      await box.setChecked(on);
    },
    count: () => actions,
  };
}

test('a grower’s own farm, from ten questions to the paper on the boss’s desk', async ({ page }) => {
  test.slow();
  await page.addInitScript(() => {
    window.print = () => sessionStorage.setItem('printed', 'yes');
  });
  await openApp(page);
  const does = counted(page);
  const button = (name: string): Locator => page.getByRole('button', { name, exact: true });

  await does.press(page.getByRole('banner').getByRole('button', { name: 'Set up my farm' }));
  await does.tick(page.getByRole('radio', { name: 'weeks' }), true);
  for (const [label, text] of own) await does.fill(label, text);
  await does.tick(page.getByRole('checkbox', { name: 'no limit' }), true);
  await does.press(button('Make this my model'));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Willow Reach');
  const week = headlineOf(page, 'Finished plants a week');
  await expect(week).toContainText('1,152');
  await expect(week).toContainText('1,560');
  await expect(page.locator('.fault-list')).toHaveCount(0);

  await does.press(button('Add a cost or return'));
  await does.fill('What is it?', 'Extra rent');
  await does.fill('How much, USD', '300');
  await does.tick(page.getByRole('checkbox', { name: 'Straight to finishing' }), false);
  await does.press(button('Add it'));
  await expect(page.locator('.said-line')).toContainText('In the budget of Nursery first: 3,600 USD a year.');

  await does.press(button('The case'));
  const screen = page.locator('.the-case');
  await expect(screen.locator('.verdict')).toContainText(/It pays|It does not pay|It cannot be told yet/, {
    timeout: 20_000,
  });
  await does.press(screen.getByRole('button', { name: 'Print the case' }));
  await expect.poll(() => page.evaluate(() => sessionStorage.getItem('printed')), { timeout: 40_000 }).toBe('yes');
  expect(does.count()).toBeLessThanOrEqual(mostActions);

  await page.emulateMedia({ media: 'print' });
  const paper = await page.locator('body').innerText();
  expect(paper).toContain('Willow Reach');
  expect(paper).toContain('Extra rent');
  expect(paper).toContain('figures that the headlines rest on are invented');
  expect(paper).not.toMatch(/\btern\b|sluice|dike|glasshouse|packer|demo farm|\bEUR\b|invented farm|row \d+/i);
});
