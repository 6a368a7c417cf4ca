import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import Papa from 'papaparse';
import { fieldOf, headlineOf, openApp, rowOf, savedFile } from './page';
import { expect, test } from './quietPage';
import { own } from './ownAnswers';

const asked = (page: Page, label: string) => page.getByLabel(label, { exact: true });

async function openSetUp(page: Page): Promise<void> {
  await page.getByRole('banner').getByRole('button', { name: 'Set up my farm' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Set up my farm' })).toBeFocused();
  await expect(page.locator('.outcome-table')).toBeVisible();
}

async function answer(page: Page): Promise<void> {
  await page.getByRole('radio', { name: 'weeks' }).check();
  for (const [label, text] of own) await asked(page, label).fill(text);
  await page.getByRole('checkbox', { name: 'no limit' }).check();
}

test('a farm from its answers to a model without a fault, and no word of the sample in its file', async ({ page }) => {
  await openApp(page);
  await page.getByRole('main').getByRole('button', { name: 'Set up my farm' }).click();
  await answer(page);
  const plants = page.locator('.outcome-table tr').filter({ hasText: 'Finished plants a week' });
  await expect(plants).toContainText('1,152');
  await expect(plants).toContainText('1,560');
  await expect(page.locator('.time-sum')).toHaveText('2 + 4 = 6 weeks, as long as today.');
  await page.getByRole('button', { name: 'Make this my model' }).click();

  await expect(page.getByRole('heading', { level: 1 })).toContainText('Willow Reach');
  await expect(headlineOf(page, 'Finished plants a week')).toContainText('1,152');
  await expect(headlineOf(page, 'Finished plants a week')).toContainText('1,560');
  await expect(page.locator('.fault-list')).toHaveCount(0);
  await expect(page.getByText('Every figure here is a sample’s.')).toHaveCount(0);

  const { name, bytes } = await savedFile(page);
  expect(name).toBe('willow-reach.csv');
  const [columns = [], ...rows] = Papa.parse<readonly string[]>(bytes.toString('utf8'), {
    delimiter: ',',
    newline: '\n',
  }).data;
  const words = rows.flatMap((texts) => texts.filter((_, i) => columns[i] !== 'source'));
  const foreign = /\btern\b|sluice|dike|glasshouse|invented|demo|sample|packer|rutgers|\bEUR\b/i;
  expect(words.filter((text) => foreign.test(text))).toEqual([]);
});

test('the new model takes no other’s place: undo brings that back, and both stand on the shelf', async ({ page }) => {
  await openApp(page);
  await fieldOf(page, 'Wage').fill('16');
  await expect(page.getByText(/^Kept on this machine at/)).toBeVisible();
  await openSetUp(page);
  await answer(page);
  await page.getByRole('button', { name: 'Make this my model' }).click();
  await expect(page.getByText('willow-reach.csv is open.')).toBeVisible();
  await page.locator('.shelf > summary').click();
  await expect(page.locator('.shelf-entries li')).toHaveCount(2);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Tern Sluice');
  await expect(fieldOf(page, 'Wage')).toHaveValue('16');
});

test('a step that is timed for the set-up comes back as its answer, with where it comes from', async ({ page }) => {
  await openApp(page);
  await openSetUp(page);
  await asked(page, 'Wage').fill('20');
  await page.getByRole('button', { name: 'Time it' }).click();
  const part = page.getByRole('region', { name: 'For “Set up my farm”' });
  await expect(part).toContainText('Time a few batches of moving plants');
  await part.getByRole('button', { name: 'Back to “Set up my farm”' }).click();
  await page.getByRole('button', { name: 'Time it' }).click();
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open trials (CSV)' }).first().click();
  const trials = 'step,plants,seconds\ntransplanting,10,110\ntransplanting,10,131\n';
  await (await chooser).setFiles({ name: 'mine.csv', mimeType: 'text/csv', buffer: Buffer.from(trials) });
  await part.getByRole('button', { name: /^Use 12\.05.s: transplanting, 2.batches$/ }).click();
  const seconds = asked(page, 'Seconds to move a plant');
  await expect(seconds).toBeFocused();
  await expect(seconds).toHaveValue('12.05');
  await expect(page.getByText(/Its source will read “timed: 2 batches, /)).toBeVisible();
  await expect(asked(page, 'Wage')).toHaveValue('20');
  await page.goBack();
  await expect(page.getByRole('heading', { name: 'Timing', exact: true })).toBeAttached();
  await page.goForward();
  await expect(page.locator('.outcome-table')).toBeVisible();
  await page.getByRole('button', { name: 'Make this my model' }).click();
  await expect(page.getByText('my-farm.csv is open.')).toBeVisible();
  const file = (await savedFile(page)).bytes.toString('utf8');
  expect(file).toMatch(/transplant_time,.*,12\.05,.*timed: 2 batches, /);
});

test('nothing that is typed is lost, and what cannot be used is told under its field', async ({ page }) => {
  await openApp(page);
  await openSetUp(page);
  const wrong: readonly (readonly [label: string, text: string, fault: RegExp])[] = [
    ['Places for boards', '0', /no number of boards: 0/],
    ['On a nursery board', '0', /no number of holes: 0/],
    ['Seconds to move a plant', 'a while', /not a number: a while/],
    ['Wage', '3,5', /decimal comma: 3,5\. Write 3\.5/],
    ['Currency', 'shells', /no currency: shells/],
  ];
  for (const [label, text] of wrong) await asked(page, label).fill(text);
  await asked(page, 'Today, without a nursery').fill('24');
  await asked(page, 'With one: in the nursery, up to the move').fill('30');
  await expect(asked(page, 'With one: in the nursery, up to the move')).toHaveAccessibleDescription(
    /as long in the nursery as now in all, or longer: 30 of 24/,
  );
  await expect(page.getByText('6 answers cannot be used yet')).toBeVisible();
  await page.getByRole('button', { name: 'Time it' }).click();
  await expect(page.getByRole('heading', { name: 'Timing', exact: true })).toBeAttached();
  await openSetUp(page);
  await expect.poll(() => page.getByText(/^Nothing changed yet|^Kept/).count()).toBeGreaterThan(0);
  await page.waitForTimeout(300);
  await page.reload();
  await expect(page.locator('.outcome-table')).toBeVisible();
  for (const [label, text, fault] of wrong) {
    await expect(asked(page, label)).toHaveValue(text);
    await expect(asked(page, label)).toHaveAccessibleDescription(fault);
  }
});

test('a crop that would become shorter is said, and one press makes it whole', async ({ page }) => {
  await openApp(page);
  await openSetUp(page);
  await answer(page);
  await asked(page, 'With one: in the nursery, up to the move').fill('1');
  await expect(page.locator('.time-sum')).toContainText('1 + 4 = 5 weeks: 1 week less than today.');
  await page.getByRole('button', { name: 'Make it 5 weeks after the move' }).click();
  await expect(asked(page, 'With one: from the move to harvest')).toHaveValue('5');
  await expect(page.locator('.time-sum')).toHaveText('1 + 5 = 6 weeks, as long as today.');
});

test('a farm of which nothing is said opens too, and each figure is called one’s own with one press', async ({
  page,
}) => {
  await openApp(page);
  await openSetUp(page);
  await page.getByRole('button', { name: 'Make this my model' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('My farm');
  const list = page.locator('.figures-list');
  await expect(list).toContainText(/0 yours, 0 guesses, \d+ taken over/);
  await list.locator('summary').click();
  const seed = list.getByRole('group', { name: 'Seed for one plug' });
  await seed.getByRole('button', { name: 'Mine' }).click();
  await expect(list).toContainText('1 yours (1 with a range taken over), 0 guesses');
  await list.getByRole('button', { name: 'Mine too' }).click();
  await expect(list).toContainText('1 yours, 0 guesses');
  await expect(seed.getByRole('button', { name: 'Change' })).toBeFocused();
  await seed.getByRole('button', { name: 'Still a guess' }).click();
  await expect(list).toContainText('0 yours, 1 guess');
  await seed.getByRole('button', { name: 'Change' }).click();
  await expect(fieldOf(page, 'Seed for one plug')).toBeFocused();
  await expect(rowOf(page, 'Seed for one plug')).toBeVisible();
});

test('what is worked out until somebody counts is changed for its own plan', async ({ page }) => {
  await openApp(page);
  await openSetUp(page);
  await page.getByRole('button', { name: 'Make this my model' }).click();
  const list = page.locator('.figures-list');
  await list.locator('summary').click();
  const boards = list.locator('li').filter({ hasText: 'Nursery boards bought' });
  await expect(boards.locator('.figure-value')).toContainText('boards in Nursery first');
  await boards.getByRole('button', { name: 'Change' }).click();
  await expect(boards.getByRole('textbox')).toBeFocused();
  await page.keyboard.type('150');
  await page.keyboard.press('Enter');
  await expect(boards.locator('.figure-value')).toContainText('150');
  await expect(boards.getByRole('button', { name: 'Change' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(rowOf(page, 'Nursery boards bought').getByRole('textbox').last()).toBeFocused();
});

test('a range that came with the model is moved to one’s own number with one press, from the keys', async ({
  page,
}) => {
  await openApp(page);
  await openSetUp(page);
  await page.getByRole('button', { name: 'Make this my model' }).click();
  const list = page.locator('.figures-list');
  await list.locator('summary').click();
  await list.getByRole('group', { name: 'Interest' }).getByRole('button', { name: 'Change' }).click();
  await fieldOf(page, 'Interest').fill('6.5');
  const row = rowOf(page, 'Interest');
  await expect(row).toContainText('Its range of 3 to 8 is still taken over.');
  await row.getByRole('button', { name: 'Make it 3.5 to 9.5' }).press('Enter');
  await expect(row.getByRole('slider')).toBeFocused();
  await expect(row).not.toContainText('taken over');
});

for (const [width, colorScheme] of [
  [1440, 'light'],
  [390, 'dark'],
  [320, 'light'],
] as const) {
  test(`axe finds nothing on the page or in the list, and nothing is too wide, ${width} px, ${colorScheme}`, async ({
    page,
  }) => {
    test.slow();
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.setViewportSize({ width, height: 900 });
    await openApp(page);
    await page.getByRole('main').getByRole('button', { name: 'Set up my farm' }).click();
    await answer(page);
    await asked(page, 'Wage').fill('dear');
    await asked(page, 'With one: in the nursery, up to the move').fill('1');
    const widest = () => page.evaluate(() => document.documentElement.scrollWidth);
    const found = async () => (await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id);
    expect(await found()).toEqual([]);
    expect(await widest()).toBeLessThanOrEqual(width);
    await page.getByRole('button', { name: 'Make this my model' }).click();
    await page.locator('.figures-list > summary').click();
    await expect(page.locator('.figures-list li').first()).toBeVisible();
    expect(await found()).toEqual([]);
    expect(await widest()).toBeLessThanOrEqual(width);
  });
}
