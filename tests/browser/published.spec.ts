import type { Locator, Page } from '@playwright/test';
import { fieldOf, openApp, rowOf } from './page';
import { expect, test } from './quietPage';

/*
 * Published cases set up by the questions of “Set up my farm”, and compared with the printed figures or with a
 * calculation on paper.
 */

const questions = (page: Page): Locator => page.getByRole('navigation', { name: 'Questions' });

/** Answers the questions and makes the model. */
async function setUp(
  page: Page,
  question: string,
  counted: 'days' | 'weeks',
  answers: Readonly<Record<string, string>>,
): Promise<void> {
  await openApp(page);
  await page.getByRole('banner').getByRole('button', { name: 'Set up my farm' }).click();
  await page.getByRole('radio', { name: question }).check();
  const times = page.getByRole('radio', { name: counted });
  if ((await times.count()) > 0) await times.check();
  for (const [label, text] of Object.entries(answers)) await page.getByLabel(label, { exact: true }).fill(text);
  await page.getByRole('button', { name: 'Make this my model' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(answers['Name of the farm'] ?? '');
  await expect(page.locator('.fault-list')).toHaveCount(0);
}

/** Expects an entry to show a number in the plan compared. */
async function shows(page: Page, label: string, number: string): Promise<void> {
  await expect(rowOf(page, label).locator('.value').last()).toContainText(number);
}

/*
 * Rutgers Horticultural Engineering, Lettuce Production: 960 plants set out a day, 10 days at 60 holes and 14 at 21
 * holes on boards of 2 by 4 ft; 945 harvested a day is from memory. 960 × 10 ÷ 60 = 160 and 945 × 14 ÷ 21 = 630
 * boards. On a pond of 6,384 ft² (Cornell CEA prototype, quoted second-hand) 790 × 8 ft² are 99.0 %.
 */
test('two stages of a published pond: 160 nursery and 630 finishing boards for 960 plants a day', async ({ page }) => {
  await setUp(page, 'Does it pay to hire', 'days', {
    'Name of the farm': 'Pond',
    'Places for boards': '790',
    'On a finishing board': '21',
    'On a nursery board': '60',
    'Today, without a nursery': '24',
    'With one: in the nursery, up to the move': '10',
    'With one: from the move to harvest': '14',
    'From one sowing to the next': '1',
    'Without a nursery: from set-out to harvest': '1.5625',
    'In the nursery and at the move': '1.5625',
    'From the move to harvest': '0',
  });
  await shows(page, 'Largest batch that fits whole boards', '960');
  await shows(page, 'Nursery boards on the fullest day', '160');
  await shows(page, 'Finishing boards on the fullest day', '630');
  // 945 a day, seven days a week.
  await shows(page, 'Finished plants a week', '6,615');
});

/*
 * C. Currey, Iowa State University, Hydroponic production primer, Produce Grower: 4 in between centers in the nursery,
 * 8 in at the end; on boards of 2 by 4 ft 72 and 18 holes. Three weeks on the water on 90 boards: 90 × 18 ÷ 3 = 540,
 * and 90 ÷ (1/72 + 2/18) = 720 heads a week from 10 nursery boards.
 */
test('published spacings of 4 and 8 in: 540 heads a week at one, 720 at two, with 10 boards in the nursery', async ({
  page,
}) => {
  await setUp(page, 'What is a nursery worth', 'weeks', {
    'Name of the farm': 'Spacings',
    'Places for boards': '90',
    'On a finishing board': '18',
    'On a nursery board': '72',
    'Today, without a nursery': '3',
    'With one: in the nursery, up to the move': '1',
    'With one: from the move to harvest': '2',
    'From one sowing to the next': '7',
    'Without a nursery: from set-out to harvest': '0',
    'In the nursery and at the move': '0',
    'From the move to harvest': '0',
  });
  await expect(rowOf(page, 'Finished plants a week').locator('.value')).toContainText(['540', '720']);
  await shows(page, 'Nursery boards on the fullest day', '10');
  await shows(page, 'Finishing boards on the fullest day', '80');
});

/*
 * With a share p lost at each use and at most L uses, E = 1 + (1 − p) + … + (1 − p)^(L − 1) = (1 − (1 − p)^L) ÷ p (a
 * geometric series). For 5 % and 60 uses (1 − 0.95^60) ÷ 0.05 = (1 − 0.0460698) ÷ 0.05 = 19.08; for none lost it is L.
 */
test('uses to expect of a holder, with losses and without', async ({ page }) => {
  await setUp(page, 'plug', 'days', { 'Name of the farm': 'Holders' });
  await fieldOf(page, 'Most uses').fill('60');
  const lost = rowOf(page, 'Lost at each use').getByRole('textbox');
  await lost.fill('5');
  await shows(page, 'Uses to expect', '19.08');
  await lost.fill('0');
  await shows(page, 'Uses to expect', '60');
});

interface Line {
  readonly what: string;
  readonly amount: string;
  readonly side: 'a cost' | 'a return';
  /** The plan that has it. */
  readonly plan: string;
}

async function addLine(page: Page, { what, amount, side, plan }: Line, plans: readonly string[]): Promise<void> {
  await page.getByRole('button', { name: 'Add a cost or return' }).click();
  await page.getByRole('radio', { name: side, exact: true }).check();
  await page.getByLabel('What is it?').fill(what);
  await page.getByLabel(/^How much/).fill(amount);
  await page.getByRole('combobox', { name: 'How often' }).selectOption('a year');
  for (const name of plans) await page.getByRole('checkbox', { name, exact: true }).setChecked(name === plan);
  await page.getByRole('button', { name: 'Add it', exact: true }).click();
  await expect(page.locator('.said-line')).toContainText(what);
}

/*
 * PB1: “Partial Budget Analysis”, studylib.net document 15970091 (salad greens for specialty beans, one bed): added
 * returns 150.00, reduced costs 182.50 + 26.66, reduced returns 360.00, added costs 28.00 + 8.53; net change −37.37.
 * PB2: “Partial budget is simple, useful financial tool”, Southeast Farm Press (100 acres of corn for dry beans):
 * 97,500, 55,000, 88,000, 69,000; net change −4,500 (its last sentence prints 152,000 for the sum 152,500).
 */
const budgets: [
  name: string,
  lines: readonly (readonly [string, string, 'a cost' | 'a return', string])[],
  net: string,
][] = [
  [
    'a bed of salad greens for beans',
    [
      ['Greens sold', '150', 'a return', 'New'],
      ['Beans sold', '360', 'a return', 'Old'],
      ['Labour for beans', '182.50', 'a cost', 'Old'],
      ['Inputs for beans', '26.66', 'a cost', 'Old'],
      ['Labour for greens', '28', 'a cost', 'New'],
      ['Inputs for greens', '8.53', 'a cost', 'New'],
    ],
    '−37.37',
  ],
  [
    '100 acres of corn for dry beans',
    [
      ['Corn sold', '97500', 'a return', 'New'],
      ['Dry beans sold', '88000', 'a return', 'Old'],
      ['Costs of beans', '55000', 'a cost', 'Old'],
      ['Costs of corn', '69000', 'a cost', 'New'],
    ],
    '−4,500.00',
  ],
];

for (const [name, lines, net] of budgets) {
  test(`a published partial budget, ${name}: net change ${net}`, async ({ page }) => {
    test.slow();
    await setUp(page, 'Does it pay to hire', 'days', { 'Name of the farm': 'Beds', Currency: 'USD' });
    await questions(page).getByRole('button', { name: 'Plans' }).click();
    const plans = page.getByRole('region', { name: 'Plans', exact: true });
    // Two copies of one plan differ in nothing but in the lines that are added.
    for (const copy of ['Old', 'New']) {
      await plans.getByRole('button', { name: 'Copy Straight to finishing', exact: true }).click();
      await plans.getByLabel('Name of the copy').fill(copy);
      await plans.getByRole('button', { name: 'Make the copy', exact: true }).click();
    }
    await plans.getByRole('combobox', { name: 'Compare A' }).selectOption('Old');
    await plans.getByRole('combobox', { name: 'with B' }).selectOption('New');
    const all = ['Straight to finishing', 'Old', 'New', 'Nursery first'];
    for (const [what, amount, side, plan] of lines) await addLine(page, { what, amount, side, plan }, all);
    await questions(page).getByRole('button', { name: 'The case' }).click();
    const budget = page.getByRole('table', { name: /^Partial budget/ });
    await expect(budget.getByRole('row', { name: /^Net change/ })).toContainText(net);
    for (const [what] of lines) await expect(budget.getByRole('row', { name: new RegExp(what) })).toHaveCount(1);
  });
}
