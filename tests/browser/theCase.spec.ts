import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { pole } from './hire';
import { chooseFile, csvFile, fieldOf, openApp, rowOf } from './page';
import { paperOf, pressPrint, withoutDialog } from './printing';
import { expect, test } from './quietPage';
import { savedLines } from './takingOut';

/** Moving is paid 120,000 × 12 s × 15 EUR/h ÷ 3,600 = 6,000; heads bring 20,000 × 0.50 = 10,000 more. */
const marked = [
  'name,label,unit,formula,low,high,group,role,budget,plan: Today,plan: With a hire',
  ',Does a hire pay? A made-up farm,,,,,,,,,',
  'move_time,Move a plant,s/plant,12,9,22,Hands,,,,',
  'wage,Wage,EUR/h,15,12,20,Hands,,,,',
  'hired,Plants moved by the hire,plant/year,,,,Hands,,,0,120000',
  'heads,Heads a year,plant/year,,,,Selling,headline,,100000,120000',
  'price,Price of a head,EUR/plant,0.5,0.4,0.6,Selling,,,,',
  'sales,Sales,EUR/year,heads * price,,,Money,,return,,',
  'hands,Hands,EUR/year,hired * move_time * wage,,,Money,,cost,,',
  'rent,Rent,EUR/year,9000,,,Money,,cost,,',
  'margin,Margin,EUR/year,sales - hands - rent,,,Money,headline,,,',
  'covered,Sales do not cover the hands.,,sales > hands,,,Checks,check,,,',
  '',
].join('\n');

const screen = (page: Page): Locator => page.getByRole('region', { name: 'The case' });
const finding = (page: Page): Locator => screen(page).locator('.finding').first();
const budget = (page: Page): Locator => screen(page).getByRole('table', { name: /^Partial budget/ });
const words = (page: Page): Locator => screen(page).getByRole('textbox', { name: 'In your own words' });

async function ask(page: Page, question: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: question }).click();
}

async function open(page: Page, model = marked): Promise<void> {
  await openApp(page);
  await chooseFile(page, csvFile('made-up.csv', model));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('made-up', { ignoreCase: true });
  await ask(page, 'The case');
}

test('the budget adds up and follows each keystroke', async ({ page }) => {
  await open(page);
  await expect(finding(page)).toHaveText(
    /^With a hire in place of Today adds 4,000\sEUR a year: 10,000\sEUR more is taken in, 6,000\sEUR more is spent\.$/,
  );
  await expect(budget(page).getByRole('row')).toHaveText([
    /entry/,
    /^Added returns.*\+10,000\.00$/,
    /^Sales10,000\.00$/,
    /^Reduced costs.*none$/,
    /^Added costs.*−6,000\.00$/,
    /^Hands6,000\.00$/,
    /^Reduced returns.*none$/,
    /^Net change\+4,000\.00$/,
  ]);
  await expect(screen(page)).toContainText('Margin changes by the same.');
  await expect(screen(page)).toContainText('Left out, as the same in both plans: Rent.');
  await fieldOf(page, 'Wage').fill('30');
  await expect(finding(page)).toHaveText(
    /loses 2,000\sEUR a year: 10,000\sEUR more is taken in, 12,000\sEUR more is spent/,
  );
  await expect(budget(page).getByRole('row', { name: /^Net change/ })).toContainText('−2,000.00');
});

test('a line leads to its entry', async ({ page }) => {
  await open(page);
  await budget(page).getByRole('button', { name: 'Hands' }).click();
  await expect(rowOf(page, 'Hands').getByRole('button', { name: 'Hands' })).toBeFocused();
});

test('it says what the answer hangs on and how sure it is', async ({ page }) => {
  await open(page);
  const hangs = screen(page).getByRole('region', { name: 'What it hangs on' });
  await hangs.scrollIntoViewIfNeeded();
  // 120,000 × 20 s × 15 ÷ 3,600 is 10,000, and 20 s are possible. 6,000 is paid for 12,000 heads more at 0.50: 112,000
  // heads are 6.7 % less, which is nearer, but the entry has no range.
  await expect(hangs).toContainText(/It stops paying when Move a plant rises above 20\ss\sper\splant/);
  await expect(hangs).toContainText('One entry by itself turns it within its own range.');
  const rows = hangs.getByRole('row');
  await expect(rows.nth(1)).toContainText(/^Move a plant.*12\s*20\s*s\/plant\s*within 9 to 22/);
  await expect(rows.nth(2)).toContainText(/^Heads a year.*120,000\s*112,000\s*plant\/year\s*no range/);
  await expect(hangs).toContainText(
    /it pays in (?:9\d|more than 99) of 100 draws; in 90 of 100 the net change lies between/,
  );
  await hangs.getByRole('button', { name: 'How sure', exact: true }).click();
  await expect(page.getByRole('region', { name: 'How sure' })).toBeVisible();
});

test('a check that does not hold stands first, and a line without a value says why', async ({ page }) => {
  await open(page);
  await rowOf(page, 'Plants moved by the hire').getByRole('textbox').last().fill('1300000');
  await expect(screen(page).getByRole('listitem').first()).toHaveText('Plan B: Sales do not cover the hands.');
  await chooseFile(
    page,
    csvFile('broken.csv', marked.replace('hired * move_time * wage', 'hired * move_time * wage * hired / hired')),
  );
  await expect(finding(page)).toHaveText('What With a hire in place of Today comes to cannot be computed today.');
  await expect(screen(page)).toContainText('Hands has no value in Today: division by 0');
  await screen(page).getByRole('button', { name: 'Go to Hands' }).click();
  await expect(rowOf(page, 'Hands').getByRole('button', { name: 'Hands' })).toBeFocused();
});

test('one’s own words stay after a reload, and with their model', async ({ page }) => {
  await open(page);
  await words(page).fill('We need hands.\n\nFor one season.');
  await screen(page).getByRole('textbox', { name: 'Prepared by' }).fill('Ada');
  await expect(screen(page)).toContainText('31 of 2,000 characters');
  await page.waitForTimeout(500);
  await page.reload();
  await expect(words(page)).toHaveValue('We need hands.\n\nFor one season.');
  await chooseFile(page, csvFile('other.csv', marked.replace('Does a hire pay?', 'Does it?')));
  await expect(words(page)).toHaveValue('');
});

test('a model without marks, and one of one plan, say what would make a case', async ({ page }) => {
  await open(page, marked.replaceAll(',return,', ',,').replaceAll(',cost,', ',,'));
  await expect(finding(page)).toHaveText('No entry of this model is marked as a line of the yearly budget.');
  await chooseFile(page, csvFile('made-up.csv', pole));
  await expect(finding(page)).toContainText('this model has one plan');
  await chooseFile(page, csvFile('made-up.csv', marked.replace('Rent,EUR/year,9000', 'Rent,EUR/month,750')));
  await expect(finding(page)).toContainText('cannot be added up');
  await expect(screen(page).getByRole('listitem').filter({ hasText: 'Rent' })).toContainText('EUR/month');
});

test('the budget can be saved for other programs', async ({ page }) => {
  await open(page);
  const { name, lines } = await savedLines(page, screen(page).getByRole('table').first());
  expect(name).toMatch(/^Does a hire pay - Partial budget .*\.csv$/);
  expect(lines).toContain('Net change,,,4000');
});

test('on paper it is the case alone: two pages, with the words, what it hangs on and what it is not', async ({
  page,
}) => {
  await withoutDialog(page);
  await openApp(page);
  await ask(page, 'The case');
  await words(page).fill('We need hands.\n\nFor one season.');
  const print = (): Promise<void> => pressPrint(page, screen(page).getByRole('button', { name: 'Print the case' }));
  for (const format of ['A4', 'Letter'] as const) {
    await print();
    expect(await paperOf(page, format)).toHaveLength(2);
  }
  await print();
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 680, height: 1000 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(680);
  for (const text of [
    'Does it pay to hire a transplanter?',
    'We need hands.',
    'It stops paying when',
    'of 100 draws',
    'Net change',
    'Guesses with a range',
    'figures that the headlines rest on are invented',
    'no financial, tax or legal advice',
    'Local rules on wages and safety decide',
    'Least pay, overtime, rests',
  ])
    await expect(page.getByText(text).filter({ visible: true }).first()).toBeVisible();
  await expect(words(page)).toBeHidden();
  await expect(screen(page).getByRole('button', { name: 'Print the case' })).toBeHidden();
  await expect(page.getByRole('heading', { name: 'Numbers', exact: true })).toBeHidden();
});

for (const [width, colorScheme] of [
  [1440, 'light'],
  [390, 'dark'],
] as const) {
  test(`axe finds nothing at ${width} px, ${colorScheme}, and nothing is wider`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.setViewportSize({ width, height: 900 });
    await open(page);
    await screen(page).getByRole('region', { name: 'What it hangs on' }).scrollIntoViewIfNeeded();
    await expect(screen(page)).toContainText('of 100 draws');
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
}
