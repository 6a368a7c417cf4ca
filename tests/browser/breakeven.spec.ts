import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { hire, pole } from './hire';
import { chooseFile, csvFile, fieldOf, openApp } from './page';
import { expect, test } from './quietPage';

const screen = (page: Page): Locator => page.getByRole('region', { name: 'Breakeven' });
const finding = (page: Page): Locator => screen(page).locator('.said');
const ask = (page: Page, question: string): Promise<void> =>
  screen(page).getByRole('button', { name: question }).click();

async function open(page: Page, model = hire): Promise<void> {
  await openApp(page);
  await chooseFile(page, csvFile('made-up.csv', model));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('made-up', { ignoreCase: true });
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'Breakeven' }).click();
  await expect(screen(page)).toBeVisible();
}

// 20,000 heads more at 0.50 EUR are 10,000 EUR; 120,000 plants at 15 EUR/h cost as much at 20 s each.
test('the usual questions are one touch away, and answered in a sentence', async ({ page }) => {
  await open(page);
  await ask(page, 'How slow may transplanting be?');
  await expect(finding(page)).toContainText('Below 20 s per plant, With a hire pays; above, it does not.');
  await expect(finding(page)).toContainText(
    'From today’s 12 s per plant, that is a rise of 8 s per plant (66.7 %), outside its range of 9 to 19 s per plant.',
  );
  await ask(page, 'How dear may an hour be?');
  await expect(finding(page)).toContainText('Below 25.00 EUR an hour, With a hire pays; above, it does not.');
  await ask(page, 'How low may the price fall?');
  await expect(finding(page)).toContainText('Above 0.300 EUR per plant, With a hire pays; below, it does not.');
  await expect(screen(page).getByRole('button', { name: 'How low may the price fall?' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await expect(screen(page).getByRole('button', { name: 'What may a plug cost?' })).toHaveCount(0);
});

test('a keystroke moves the line and the sentence in the same turn', async ({ page }) => {
  await open(page);
  await ask(page, 'How slow may transplanting be?');
  const chart = await screen(page).getByRole('img').elementHandle();
  const said = await finding(page).elementHandle();
  const after = await fieldOf(page, 'Wage').evaluate(
    (input: HTMLInputElement, [canvas, sentence]) => {
      const before = (canvas as HTMLCanvasElement).toDataURL();
      input.value = '30';
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      return { moved: (canvas as HTMLCanvasElement).toDataURL() !== before, text: sentence.textContent };
    },
    [chart, said] as const,
  );
  expect(after.moved).toBe(true);
  expect(after.text.replaceAll('\u00a0', ' ')).toContain('Below 10 s per plant, With a hire pays; above, it does not.');
});

test('no crossing is said plainly, in the range that someone sets', async ({ page }) => {
  await open(page);
  await ask(page, 'How dear may an hour be?');
  await screen(page).getByRole('textbox', { name: 'looked at from' }).fill('5');
  await screen(page).getByRole('textbox', { name: 'to EUR/h' }).fill('10');
  await expect(finding(page)).toContainText('With a hire pays at every Wage between 5.00 and 10.00 EUR an hour.');
  await screen(page).getByRole('button', { name: 'Usual range' }).click();
  await expect(finding(page)).toContainText('Below 25.00 EUR an hour');
});

test('a range without width is explained in place, and the usual one stands', async ({ page }) => {
  await open(page);
  await ask(page, 'How dear may an hour be?');
  await screen(page).getByRole('textbox', { name: 'looked at from' }).fill('99');
  await expect(screen(page).getByText('range without width: from 99 to 95')).toBeVisible();
  await expect(finding(page)).toContainText('Below 25.00 EUR an hour');
  await screen(page).getByRole('textbox', { name: 'looked at from' }).fill('dear');
  await expect(screen(page).getByText('not a number: dear')).toBeVisible();
});

test('the difference can be looked at, against a target of its own', async ({ page }) => {
  await open(page);
  await ask(page, 'How slow may transplanting be?');
  await screen(page).getByRole('radio', { name: 'difference B − A' }).check();
  await screen(page).getByRole('textbox', { name: 'target' }).fill('1000');
  await expect(finding(page)).toContainText(
    'Below 18 s per plant, the difference in Margin is at least 1,000 EUR a year; above, it is less.',
  );
  await screen(page).getByRole('radio', { name: 'both plans' }).check();
  await expect(finding(page)).toContainText('Below 20 s per plant, With a hire pays');
  await expect(screen(page).getByRole('textbox', { name: 'target' })).toHaveValue('0');
});

test('the exact crossing follows, with its digits in the table', async ({ page }) => {
  await open(page);
  await ask(page, 'How slow may transplanting be?');
  await fieldOf(page, 'Wage').fill('14');
  await screen(page).getByText('The same numbers as tables').click();
  await expect(screen(page).getByText('being worked out exactly')).toHaveCount(0);
  // 10,000 EUR ÷ (120,000 × 14 EUR/h) in seconds.
  await expect(screen(page).getByRole('rowheader', { name: '21.4285714286' })).toBeVisible();
  await expect(screen(page).getByRole('table', { name: /^Crossings/ })).toContainText(
    'A and B meet: B − A falls below 0',
  );
});

test('a break is said with its place, a result without value with its reason', async ({ page }) => {
  await open(page, pole);
  await expect(finding(page)).toContainText('At 2 it changes side without meeting 0: there it cannot be computed.');
  await fieldOf(page, 'Gap').fill('2');
  await expect(screen(page)).toContainText('Turns cannot be computed today');
  await expect(screen(page).getByRole('button', { name: 'Go to Turns' })).toBeVisible();
});

test('an input that does not touch the result is said to', async ({ page }) => {
  await open(page, `${pole}spare,Spare,,7,,,Beds,\n`);
  await screen(page).getByRole('combobox', { name: 'as this input moves' }).selectOption('Spare');
  await expect(finding(page)).toContainText('Spare does not touch Turns.');
  await expect(finding(page)).toContainText('It stays at 0.3333 whatever this entry is.');
});

test('by keyboard alone: a question, the view, the table', async ({ page }) => {
  await open(page);
  await screen(page).getByRole('button', { name: 'How slow may transplanting be?' }).focus();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(finding(page)).toContainText('Below 25.00 EUR an hour');
  await screen(page).getByRole('radio', { name: 'both plans' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(screen(page).getByRole('radio', { name: 'difference B − A' })).toBeChecked();
  await screen(page).getByText('The same numbers as tables').focus();
  await page.keyboard.press('Enter');
  await expect(screen(page).getByRole('table')).toHaveCount(2);
});

test('it follows the scheme, and stays as sharp as the page is wide', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'light' });
  await open(page);
  const chart = screen(page).getByRole('img');
  const pixels = (): Promise<string> => chart.evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());
  const light = await pixels();
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect.poll(pixels).not.toBe(light);
  await page.setViewportSize({ width: 390, height: 800 });
  await expect.poll(() => chart.evaluate((canvas) => canvas.getBoundingClientRect().width)).toBeLessThan(390);
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 390]) {
    test(`axe finds nothing at ${width} px, ${colorScheme}`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 900 });
      await open(page);
      await screen(page).getByRole('textbox', { name: 'target' }).fill('much');
      await screen(page).getByText('The same numbers as tables').click();
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))).toEqual([]);
    });
  }
}
