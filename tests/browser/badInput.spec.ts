import type { Locator, Page } from '@playwright/test';
import { chooseFile, csvFile, openApp } from './page';
import { expect, test } from './quietPage';

/*
 * What is wrong in what a person types or opens is said, with where and what would mend it, and stays as it was typed.
 * What the sentences are for each mistake is tested beside their source; here it is whether a screen shows them.
 */

const region = (page: Page, name: string): Locator => page.getByRole('region', { name, exact: true });

async function ask(page: Page, question: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: question }).click();
}

async function openTrials(page: Page, text: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open trials (CSV)' }).click();
  await (await chooser).setFiles(csvFile('trials.csv', text));
}

const trials = 'step,plants,seconds,way\nmoving,10,120,bed\nmoving,10,120,bed\nmoving,10,120,bench\n';

test('no plants, a comma for a point, batches that agree and a way with one batch', async ({ page }) => {
  await openApp(page);
  await ask(page, 'Timing');
  await openTrials(page, trials);
  const screen = region(page, 'Timing');
  // All batches equal, and one batch a way.
  await expect(screen).toContainText(/took the same 12\.0\ss a\splant/);
  await expect(region(page, 'Learning')).toContainText('all took the same');
  const plants = screen.getByRole('textbox', { name: 'plants, batch 1' });
  await plants.fill('0');
  await expect(plants).toHaveAccessibleDescription(/Plants not a whole number above 0: 0\. Count the plants/);
  const seconds = screen.getByRole('textbox', { name: 'seconds, batch 2' });
  await seconds.fill('3,5');
  await expect(seconds).toHaveAccessibleDescription(/3,5.*3\.5/);
  await expect(seconds).toHaveAttribute('aria-invalid', 'true');
  await expect(region(page, 'Two ways of working')).not.toContainText(/NaN|Infinity/);
  await page.waitForTimeout(600);
  await page.reload();
  await expect(plants).toHaveValue('0');
  await expect(seconds).toHaveValue('3,5');
  await plants.fill('10');
  await seconds.fill('3.5');
  await expect(screen.locator('.said').first()).not.toContainText('left out');
});

test('of two ways one has a single batch: no interval is told, and why', async ({ page }) => {
  await openApp(page);
  await ask(page, 'Timing');
  await openTrials(page, trials.replace('bench', 'bench\nmoving,10,100,knee').replaceAll(',120,bench', ',90,bench'));
  await expect(region(page, 'Two ways of working')).toContainText(
    'One batch of a way says nothing of how far the next may lie off: time at least two more of it.',
  );
});

const hopeless = [
  'name,label,unit,formula,budget,plan: A,plan: B',
  ',An invented farm,,,,,',
  'none,None,,0,,,',
  'heads,Heads,head/year,1000,,,',
  'sales,Sales,EUR/year,100,return,,',
  'hands,Hands,EUR/year,sales,cost,,sales / none',
  '',
].join('\n');

/** Brings the years into sight, also where what stands above them comes a moment later and moves them out of it. */
async function showYears(years: Locator): Promise<void> {
  await expect(async () => {
    await years.scrollIntoViewIfNeeded();
    await expect(years.getByLabel('Outlay, paid once')).toBeVisible({ timeout: 1_000 });
  }).toPass();
}

test('an answer that cannot be computed has its sentence, and nothing is drawn of it', async ({ page }) => {
  await openApp(page);
  await chooseFile(page, csvFile('hopeless.csv', hopeless));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('An invented farm');
  await ask(page, 'Plans');
  const one = region(page, 'Enterprise budget of one plan');
  await one.scrollIntoViewIfNeeded();
  await expect(one).toContainText('A line has no value in this plan today, so nothing can be added up.');
  await expect(one.getByRole('button', { name: /Copy or save: What a plant costs/ })).toHaveCount(0);
  await expect(one).not.toContainText(/NaN|Infinity/);
  await ask(page, 'The case');
  const years = region(page, 'What does the outlay bring over the years?');
  await showYears(years);
  await years.getByLabel('Outlay, paid once').fill('500');
  await expect(years).toContainText('What the change brings a year cannot be computed today');
  await expect(years.getByRole('img')).toHaveCount(0);
  await expect(years.getByLabel('Outlay, paid once')).toHaveValue('500');
});

test('a range of the outlay that cannot be one is said, and kept', async ({ page }) => {
  await openApp(page);
  await chooseFile(page, csvFile('farm.csv', hopeless.replace('sales / none', '60')));
  await ask(page, 'The case');
  const years = region(page, 'What does the outlay bring over the years?');
  await showYears(years);
  await years.getByLabel('Outlay, paid once').fill('200');
  await years.getByLabel('at least').fill('100');
  await expect(years).toContainText('half a range of the outlay: give both, at least and at most.');
  await years.getByLabel('at most').fill('150');
  await expect(years).toContainText('outlay outside its range from 100 to 150: 200. Widen the range');
  await years.getByLabel('at most').fill('450');
  // 40 a year for 10 years at 5 % pay for 309: most of a range from 100 to 450 about 200.
  await expect(years.locator('.years-finding')).toContainText(
    /The outlay is drawn too, between 100\.00\sEUR and 450\.00\sEUR, with the same start number\./,
  );
  await years.getByRole('button', { name: 'Take the outlay as certain' }).click();
  await expect(years.getByLabel('at least')).toHaveValue('');
  await expect(years.locator('.years-finding')).not.toContainText('drawn too');
});

/** Tasks of the page above 50 ms, in ms, since the last time it was asked. */
async function longTasks(page: Page): Promise<number[]> {
  return page.evaluate(() => (window as unknown as { tasks: number[] }).tasks.splice(0));
}

test('10,000 batches: all are told, and no keystroke waits for them', async ({ page }) => {
  await page.addInitScript(() => {
    const tasks: number[] = [];
    new PerformanceObserver((list) => tasks.push(...list.getEntries().map(({ duration }) => duration))).observe({
      type: 'longtask',
    });
    Object.assign(window, { tasks });
  });
  const rows = Array.from({ length: 10_000 }, (_, i) => `moving,10,${100 + ((i * 7919) % 40)}`);
  await openApp(page);
  await ask(page, 'Timing');
  await page.waitForTimeout(500);
  await longTasks(page);
  await openTrials(page, ['step,plants,seconds', ...rows, ''].join('\n'));
  const screen = region(page, 'Timing');
  await expect(region(page, 'Each step').getByRole('row', { name: /moving/ })).toContainText('10,000');
  await page.waitForTimeout(1500);
  const opened = await longTasks(page);
  const seconds = screen.getByRole('textbox', { name: 'seconds, batch 3', exact: true });
  await seconds.click();
  await page.waitForTimeout(300);
  await longTasks(page);
  await page.keyboard.press('End');
  for (const key of ['.', '2', '5']) await page.keyboard.press(key);
  const typed = await longTasks(page);
  await seconds.press('Tab');
  await page.waitForTimeout(1500);
  const left = await longTasks(page);
  test.info().annotations.push({ type: 'long tasks', description: JSON.stringify({ opened, typed, left }) });
  // All of them are worked out once the field rests, in tasks of their own; how long those take hangs on the machine.
  const sum = (tasks: readonly number[]): number => tasks.reduce((all, task) => all + task, 0);
  expect(sum(typed)).toBeLessThan(0.5 * sum(left) + 50);
  await expect(seconds).toHaveValue(/\.25$/);
});
