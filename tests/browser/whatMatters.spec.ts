import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { hire, pole } from './hire';
import { chooseFile, csvFile, fieldOf, openApp } from './page';
import { expect, test } from './quietPage';

const screen = (page: Page): Locator => page.getByRole('region', { name: 'What matters' });
const finding = (page: Page): Locator => screen(page).locator('.said');
const bars = (page: Page): Locator => screen(page).locator('.bars').getByRole('button');

async function open(page: Page, model = hire): Promise<void> {
  await openApp(page);
  await chooseFile(page, csvFile('made-up.csv', model));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('made-up', { ignoreCase: true });
}

/** The labels of the bars from the top. */
async function order(page: Page): Promise<string[]> {
  return (await screen(page).locator('.bar-label').allTextContents()).map((text) => text.replace('*', ''));
}

/** Whether the chart is another one right after an input's text changed, before the browser draws the page. */
async function movesAtOnce(page: Page, field: Locator, text: string): Promise<boolean> {
  const chart = await screen(page).getByRole('img').elementHandle();
  return field.evaluate((input: HTMLInputElement, [canvas, typed]) => {
    const before = (canvas as HTMLCanvasElement).toDataURL();
    input.value = typed;
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    return (canvas as HTMLCanvasElement).toDataURL() !== before;
  }, [chart, text] as const);
}

// Today: 20,000 heads more at 0.50 EUR are 10,000 EUR; 120,000 plants × 12 s × 15 EUR/h are 6,000 EUR.
test('the finding is said, from the difference of the two plans', async ({ page }) => {
  await open(page);
  await expect(finding(page)).toContainText(
    'Move a plant moves the difference in Margin most: 5,000 EUR a year between 9 and 19 s per plant.');
  await expect(finding(page)).toContainText('No entry by itself flips the answer');
  await expect(screen(page).getByRole('img')).toHaveAccessibleName(/^Move a plant moves the difference in Margin most/);
});

test('a keystroke moves the bars in the same turn, and the sentence says that the answer flips', async ({ page }) => {
  await open(page);
  await expect(bars(page)).toHaveCount(3);
  expect(await order(page)).toEqual(['Move a plant', 'Price of a head', 'Wage']);
  expect(await movesAtOnce(page, fieldOf(page, 'Move a plant'), '18')).toBe(true);
  expect(await order(page)).toEqual(['Move a plant', 'Wage', 'Price of a head']);
  await expect(finding(page)).toContainText('The answer flips between the ends of 2 entries, each by itself: Wage and Price of a head.');
  await expect(bars(page).filter({ hasText: 'Wage' })).toContainText('flips');
});

test('a click on a bar goes to its input, and so does the keyboard', async ({ page }) => {
  await open(page);
  await bars(page).filter({ hasText: 'Wage' }).click();
  await expect(fieldOf(page, 'Wage')).toBeFocused();
  await screen(page).getByRole('combobox').focus();
  await page.keyboard.press('Tab');
  await expect(screen(page).getByRole('radio', { name: 'difference B − A' })).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(bars(page).nth(1)).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(fieldOf(page, 'Price of a head')).toBeFocused();
});

test('one plan can be looked at by itself, and the choice stays', async ({ page }) => {
  await open(page);
  await screen(page).getByRole('radio', { name: 'A Today' }).check();
  await expect(finding(page)).toContainText('Price of a head moves Margin in Today most: 20,000 EUR a year');
  await expect(bars(page).nth(1)).toContainText('swing 0');
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'Breakeven' }).click();
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'What matters' }).click();
  await expect(finding(page)).toContainText('Margin in Today');
});

test('the table has the same numbers, exactly', async ({ page }) => {
  await open(page);
  await screen(page).getByText('The same numbers as a table').click();
  const rows = screen(page).getByRole('row');
  await expect(rows.nth(1)).toHaveText(/Move a plant\s*9\ss\/plant\s*19\ss\/plant\s*5,500\s*500\s*5,000/);
  await expect(rows.nth(3)).toHaveText(/Wage 5th and 95th percentile\s*12\sEUR\/h\s*20\sEUR\/h\s*5,200\s*2,000\s*3,200/);
});

test('many bars show the first twelve until all are asked for', async ({ page }) => {
  await openApp(page);
  await expect(bars(page)).toHaveCount(12);
  await screen(page).getByRole('button', { name: /^Show all/ }).click();
  expect(await bars(page).count()).toBeGreaterThan(20);
  await screen(page).getByRole('button', { name: 'Show the first 12 only' }).click();
  await expect(bars(page)).toHaveCount(12);
});

test('an end that cannot be computed is said at its bar', async ({ page }) => {
  await open(page, pole.replace('5,3,8', '5,2,8'));
  await expect(finding(page)).toContainText('At an end of Gap it cannot be computed.');
  await screen(page).getByText('The same numbers as a table').click();
  await expect(screen(page).getByRole('row').nth(1)).toHaveText(/Gap\s*2\s*8\s*cannot be computed\s*0\.1667\s*unknown/);
});

test('a result that cannot be computed today says why and leads there', async ({ page }) => {
  await open(page, pole);
  await fieldOf(page, 'Gap').fill('2');
  await expect(screen(page)).toContainText('Turns cannot be computed today');
  await screen(page).getByRole('button', { name: 'Go to Turns' }).click();
  await expect(page.getByRole('button', { name: 'Turns', exact: true }).last()).toBeFocused();
  await fieldOf(page, 'Gap').fill('4');
  await expect(finding(page)).toContainText('Gap moves Turns most');
});

test('a model without a result says that there is nothing to ask', async ({ page }) => {
  await open(page, 'name,label,formula\n,A made-up list,\na,Alone,1\n');
  await expect(screen(page)).toContainText('There is nothing to ask about yet.');
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 390]) {
    test(`axe finds nothing at ${width} px, ${colorScheme}`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 900 });
      await open(page);
      await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'What matters' }).click();
      await screen(page).getByText('The same numbers as a table').click();
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))).toEqual([]);
    });
  }
}
