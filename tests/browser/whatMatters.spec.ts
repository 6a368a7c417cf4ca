import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { hire, pole } from './hire';
import { chooseFile, csvFile, fieldOf, openApp } from './page';
import { expect, test } from './quietPage';
import { savedLines } from './takingOut';

const screen = (page: Page): Locator => page.getByRole('region', { name: 'What matters' });
const finding = (page: Page): Locator => screen(page).locator('.said').first();
const part = (page: Page, name: string): Locator => screen(page).getByRole('region', { name, exact: true });
const bars = (page: Page): Locator => screen(page).locator('.bars').getByRole('button');

/** A made-up model in which foam is cheapest until its price comes to 0.06. */
const plugs = [
  'name,label,unit,formula,low,high,group,role',
  ',Which made-up plug?,,,,,,',
  'foam,Foam price,GBP/plug,0.04,0.03,0.06,Prices,',
  'hands,Hands,GBP/plug,0.02,,,Prices,',
  'need,Plugs for a plant,plug/plant,1,,,Prices,',
  'foam_cost,Foam: cost,GBP/plant,(foam + hands) * need,,,Costs,headline',
  'holder_cost,Holder: cost,GBP/plant,hands * need * 4,,,Costs,headline',
  '',
].join('\n');

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
  const chart = await screen(page).getByRole('img').first().elementHandle();
  return field.evaluate(
    (input: HTMLInputElement, [canvas, typed]) => {
      const before = (canvas as HTMLCanvasElement).toDataURL();
      input.value = typed;
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      return (canvas as HTMLCanvasElement).toDataURL() !== before;
    },
    [chart, text] as const,
  );
}

// Today: 20,000 heads more at 0.50 EUR are 10,000 EUR; 120,000 plants × 12 s × 15 EUR/h are 6,000 EUR.
test('the finding is said, from the difference of the two plans', async ({ page }) => {
  await open(page);
  await expect(finding(page)).toContainText(
    'Move a plant moves the difference in Margin most: 5,000 EUR a year between 9 and 19 s per plant.',
  );
  await expect(finding(page)).toContainText('No entry by itself flips the answer');
  await expect(screen(page).getByRole('img').first()).toHaveAccessibleName(
    /^Move a plant moves the difference in Margin most/,
  );
});

test('a keystroke moves the bars in the same turn, and the sentence says that the answer flips', async ({ page }) => {
  await open(page);
  await expect(bars(page)).toHaveCount(3);
  expect(await order(page)).toEqual(['Move a plant', 'Price of a head', 'Wage']);
  expect(await movesAtOnce(page, fieldOf(page, 'Move a plant'), '18')).toBe(true);
  expect(await order(page)).toEqual(['Move a plant', 'Wage', 'Price of a head']);
  await expect(finding(page)).toContainText(
    'The answer flips between the ends of 2 entries, each by itself: Wage and Price of a head.',
  );
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
  await expect(bars(page).nth(1)).toContainText('moves it by 0');
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'Breakeven' }).click();
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'What matters' }).click();
  await expect(finding(page)).toContainText('Margin in Today');
});

test('the table has the same numbers, exactly', async ({ page }) => {
  await open(page);
  await screen(page).getByText('The same numbers as a table').click();
  const rows = screen(page).getByRole('row');
  await expect(rows.nth(1)).toHaveText(/Move a plant\s*9\ss\/plant\s*19\ss\/plant\s*5,500\s*500\s*5,000/);
  await expect(rows.nth(3)).toHaveText(
    /Wage 5th and 95th percentile\s*12\sEUR\/h\s*20\sEUR\/h\s*5,200\s*2,000\s*3,200/,
  );
});

test('many bars show the first eight until all are asked for', async ({ page }) => {
  await openApp(page);
  await expect(bars(page)).toHaveCount(8);
  await screen(page)
    .getByRole('button', { name: /^Show all/ })
    .click();
  // The bars are worked out in slices, of which a busy machine needs more than one.
  await expect.poll(() => bars(page).count()).toBeGreaterThan(20);
  await screen(page).getByRole('button', { name: 'Show the first 8 only' }).click();
  await expect(bars(page)).toHaveCount(8);
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

// Today's 6,000 EUR of hands are the seconds × the wage: each per cent of either is 60 EUR.
test('per cent for per cent is said, drawn, told as a table and saved', async ({ page }) => {
  await open(page);
  const spider = part(page, 'Per cent for per cent');
  await spider.scrollIntoViewIfNeeded();
  // 20,000 heads at 0.50 EUR: each per cent of the price is 100 EUR.
  await expect(spider).toContainText(
    'Per cent for per cent, Price of a head moves the difference in Margin most: 100.00 EUR a year for each per cent',
  );
  await expect(spider).toContainText('The lines run nearly straight');
  await expect(spider.getByRole('img')).toHaveAccessibleName(/^Per cent for per cent, Price of a head/);
  await expect(spider.locator('.line-key li')).toHaveText([/Price of a head\s*\+100\.00/, /−60\.00/, /−60\.00/]);
  await spider.getByText('The same lines as a table').click();
  await expect(spider.getByRole('row', { name: /^Wage/ }).first()).toHaveText(/Wage\s*−20\.0\s%\s*12\sEUR\/h\s*5,200/);
  const shown = await savedLines(page, spider.getByRole('table'));
  expect(shown.name).toBe('Does a hire pay - Margin, B − A, EUR year.csv');
  expect(shown.lines[0]).toBe('entry,"change, %",number,unit of number,"result, EUR/year"');
  // The picture's own numbers are all places of the lines, of which the table shows a few.
  const drawn = await savedLines(page, spider.locator('canvas'));
  expect(drawn.lines.length).toBeGreaterThan(shown.lines.length);
  await fieldOf(page, 'Price of a head').fill('0');
  await expect(spider).toContainText('Price of a head is 0 today, so no change is a per cent of that');
});

test('what drives the spread stands beside the bars, in their order', async ({ page }) => {
  await open(page);
  const drivers = part(page, 'Which guesses drive the spread');
  await drivers.scrollIntoViewIfNeeded();
  await expect(drivers).toContainText('drives the spread most');
  await expect(drivers.locator('.driver-rows').getByRole('button')).toHaveText(await order(page));
  await expect(drivers).toContainText(/has the longest/);
});

test('entries that the file ties together are shared out only as if drawn apart', async ({ page }) => {
  await open(
    page,
    hire
      .replace('role,plan: Today', 'role,correlation,plan: Today')
      .replace(/^(,Does.*)$/m, '$1,')
      .replace('Hands,,,\nwage', 'Hands,,wage 0.5,,\nwage')
      .replace('EUR/h,15,12,20,normal,Hands,,,', 'EUR/h,15,12,20,normal,Hands,,,,')
      .replace('Hands,,0,120000', 'Hands,,,0,120000')
      .replace('Selling,,100000', 'Selling,,,100000')
      .replace('0.6,,Selling,,,', '0.6,,Selling,,,,')
      .replace('Money,,,\n', 'Money,,,,\n')
      .replace('headline,,\n', 'headline,,,\n'),
  );
  const drivers = part(page, 'Which guesses drive the spread');
  await drivers.scrollIntoViewIfNeeded();
  await expect(drivers).toContainText('the file ties Move a plant with Wage');
  await expect(drivers.locator('.driver-rows')).toHaveCount(0);
  await drivers.getByRole('checkbox', { name: 'show the shares as if drawn apart' }).check();
  await expect(drivers).toContainText('The file ties Move a plant with Wage; these shares treat them as apart.');
  await expect(drivers.locator('.driver-rows li')).toHaveCount(3);
});

test('costs of a plant stand side by side against any input', async ({ page }) => {
  await open(page, plugs);
  const side = part(page, 'Side by side');
  await side.scrollIntoViewIfNeeded();
  await side.getByRole('combobox').selectOption({ label: 'Foam price' });
  // Foam and 0.02 of hands meet the holder's 0.08 at 0.06.
  await expect(side).toContainText(
    'Foam: cost is cheapest today, at 0.0600 GBP per plant. ' +
      'As Foam price rises it stays so up to 0.0600 GBP per plug, then Holder: cost.',
  );
  await side.getByText('The same lines as tables').click();
  await expect(side.getByRole('row', { name: /today/ })).toHaveText(/0\.04 today\s*0\.060\s*0\.080\s*Foam: cost/);
  await side.getByRole('checkbox', { name: 'Holder: cost' }).uncheck();
  await expect(side).toContainText('It stays so as Foam price moves');
  await expect(side.getByRole('checkbox', { name: 'Foam: cost' })).toBeDisabled();
});

test('a model with nothing to compare offers nothing side by side', async ({ page }) => {
  await open(page);
  await expect(bars(page)).toHaveCount(3);
  await expect(part(page, 'Side by side')).toHaveCount(0);
});

test('a model without a result says that there is nothing to ask', async ({ page }) => {
  await open(page, 'name,label,formula\n,A made-up list,\na,Alone,1\n');
  await expect(screen(page)).toContainText('There is nothing to ask about yet.');
});

test('on a narrow phone nothing stands out sideways, whatever is unfolded', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 900 });
  await openApp(page);
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'What matters' }).click();
  for (const name of ['Per cent for per cent', 'Side by side']) {
    await part(page, name).scrollIntoViewIfNeeded();
    await part(page, name).locator('.numbers-behind > summary').click();
    await expect(part(page, name).getByRole('table').first()).toBeVisible();
  }
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 320]) {
    test(`axe finds nothing at ${width} px, ${colorScheme}`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 900 });
      await open(page);
      await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'What matters' }).click();
      await screen(page).getByText('The same numbers as a table').click();
      await part(page, 'Per cent for per cent').scrollIntoViewIfNeeded();
      await screen(page).getByText('The same lines as a table').click();
      await part(page, 'Which guesses drive the spread').scrollIntoViewIfNeeded();
      await expect(part(page, 'Which guesses drive the spread')).toContainText('drives the spread most');
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))).toEqual([]);
    });
  }
}
