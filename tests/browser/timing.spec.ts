import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { csvFile, fieldOf, headlineOf, openApp } from './page';
import { expect, test } from './quietPage';
import { savedLines } from './takingOut';

const screen = (page: Page): Locator => page.getByRole('region', { name: 'Timing', exact: true });
const finding = (page: Page): Locator => screen(page).locator('.said');
const part = (page: Page, name: string): Locator => screen(page).getByRole('region', { name, exact: true });
const questions = (page: Page): Locator => page.getByRole('navigation', { name: 'Questions' });

// Mean 12, from 10.7 to 13.3, 8 batches needed: worked out beside tests/ui/timing/told.test.ts.
const trials = [
  'step,plants,seconds,worker,rating,date,lost,note,tray',
  'transplanting,10,110,A,,2031-03-03,1,,red',
  'transplanting,10,120,A,,2031-03-04,,,',
  'transplanting,10,130,B,100,2031-03-05,,,',
  'transplanting,10,120,B,,2031-03-06,,"wet, cold",',
  '',
].join('\n');

async function openTiming(page: Page): Promise<void> {
  await openApp(page);
  await questions(page).getByRole('button', { name: 'Timing' }).click();
  await expect(screen(page)).toBeVisible();
}

async function openTrials(page: Page, text = trials): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await screen(page).getByRole('button', { name: 'Open trials (CSV)' }).click();
  await (await chooser).setFiles(csvFile('mine.csv', text));
}

async function saved(page: Page, button: string): Promise<{ name: string; text: string }> {
  const saving = page.waitForEvent('download');
  await screen(page).getByRole('button', { name: button }).click();
  const download = await saving;
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk as Uint8Array));
  return { name: download.suggestedFilename(), text: Buffer.concat(chunks).toString('utf8') };
}

/** Waits until the work is kept on this machine, then loads the page again. */
async function reload(page: Page): Promise<void> {
  await page.waitForTimeout(600);
  await page.reload();
  await expect(screen(page)).toBeVisible();
}

test('a file of trials is opened, told, drawn and tabled', async ({ page }) => {
  await openTiming(page);
  await expect(screen(page)).toContainText('A file has the columns step, plants and seconds');
  await openTrials(page);
  await expect(finding(page)).toContainText(
    'Transplanting takes 12.0 s a plant, between 10.7 and 13.3 at 95 % confidence: time 4 more batches to be within 5 %.',
  );
  await expect(finding(page)).toContainText('allowance of 15 % of the job (× 1.15), the standard time is 13.8 s');
  const row = part(page, 'Each step').getByRole('row', { name: /transplanting/ });
  await expect(row.getByRole('cell')).toHaveText(['4', '12.0', '10.7', '13.3', '8', '13.8', '40', '10 %']);
  await expect(screen(page).getByRole('img', { name: /Transplanting takes 12\.0/ })).toBeVisible();
  await screen(page).getByText('The batches behind the picture').click();
  const behind = screen(page).getByRole('region', { name: 'The batches behind the picture' });
  await expect(behind.getByRole('row').nth(1).getByRole('cell')).toHaveText(['1', '10', '11.00', '−8.3 %']);
});

test('what is no trials file, or too many, is refused and changes nothing', async ({ page }) => {
  await openTiming(page);
  await openTrials(page);
  await openTrials(page, 'name,label\na,b\n');
  await expect(screen(page).getByRole('alert')).toContainText('missing columns: step, plants, seconds');
  await openTrials(page, trials + 'transplanting,10,120,,,,,,\n'.repeat(8000));
  await expect(screen(page).getByRole('alert')).toContainText('npm run cli -- time FILE');
  await expect(finding(page)).toContainText('12.0 s a plant');
});

test('nonsense is kept, marked and left out, and nothing else of the file is touched', async ({ page }) => {
  await openTiming(page);
  await openTrials(page);
  const plants = screen(page).getByRole('textbox', { name: 'plants, batch 2' });
  await plants.fill('a dozen');
  await expect(plants).toHaveAttribute('aria-invalid', 'true');
  await expect(plants).toHaveAccessibleDescription(/In plants, not a number: a dozen\. Write digits, as in 1,234\.5\./);
  await expect(finding(page)).toContainText('1 batch is left out until filled in or mended.');
  await reload(page);
  await expect(plants).toHaveValue('a dozen');
  const { name, text } = await saved(page, 'Save the trials (CSV)');
  expect(name).toBe('mine.csv');
  expect(text).toBe(trials.replace('10,120,A', 'a dozen,120,A'));
  await plants.fill('10');
  await expect(finding(page)).toContainText('Transplanting takes 12.0 s a plant');
});

test('a number that could be read in two ways is asked about, and not counted until it is clear', async ({ page }) => {
  await openTiming(page);
  await openTrials(page);
  const seconds = part(page, 'Batches of transplanting').getByRole('textbox', { name: 'seconds, batch 1' });
  await seconds.pressSequentially('1,234', { delay: 20 });
  await seconds.fill('1,234');
  const asked = screen(page).getByText('In seconds, read two ways: 1,234. Write 1234 if the mark parts thousands');
  await expect(asked).toBeVisible();
  await seconds.press('Tab');
  await expect(seconds).toHaveValue('1,234');
  await expect(finding(page)).toContainText('takes 12.0 s a plant');
  await seconds.fill('1234');
  await expect(asked).toHaveCount(0);
  await expect(finding(page)).not.toContainText('takes 12.0 s a plant');
});

test('a finding that typing a batch changes is busy until it stands', async ({ page }) => {
  await openTiming(page);
  await openTrials(page);
  const said = screen(page).locator('.said').first();
  await expect(said).toHaveAttribute('aria-busy', 'false');
  const seconds = screen(page).getByRole('textbox', { name: 'seconds, batch 1' });
  const atOnce = await seconds.evaluate((field: HTMLInputElement) => {
    field.value = '150';
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    return document.querySelector('.timing .said')!.getAttribute('aria-busy');
  });
  expect(atOnce).toBe('true');
  await expect(said).toHaveAttribute('aria-busy', 'false');
});

test('a batch is added, filled in, taken out and put back', async ({ page }) => {
  await openTiming(page);
  await openTrials(page);
  await part(page, 'Batches of transplanting').getByRole('button', { name: 'Add a batch' }).click();
  const plants = screen(page).getByRole('textbox', { name: 'plants, batch 5' });
  await expect(plants).toBeFocused();
  await expect(screen(page)).toContainText('Not counted yet: plants and seconds still blank.');
  await page.keyboard.type('10');
  await page.keyboard.press('Tab');
  await page.keyboard.type('120.5');
  await expect(
    part(page, 'Each step')
      .getByRole('row', { name: /transplanting/ })
      .getByRole('cell')
      .first(),
  ).toHaveText('5');
  await screen(page).getByRole('button', { name: 'Take out batch 1' }).click();
  await expect(screen(page).getByRole('textbox', { name: 'seconds, batch 1' })).toHaveValue('120');
  await screen(page).getByRole('button', { name: 'Take it back' }).click();
  await expect(screen(page).getByRole('textbox', { name: 'seconds, batch 1' })).toHaveValue('110');
  await expect(screen(page).getByRole('textbox', { name: 'seconds, batch 5' })).toHaveValue('120.5');
});

test('another name moves a batch to another step, which can be looked at', async ({ page }) => {
  await openTiming(page);
  await openTrials(page);
  await screen(page).getByRole('button', { name: 'Way, worker, date, step, note and why left out' }).click();
  const step = screen(page).getByRole('textbox', { name: 'step, batch 4' });
  await step.fill('lifting');
  await step.press('Enter');
  await expect(finding(page)).toContainText(
    'Lifting took 12.0 s a plant in one batch. One batch says nothing of how far',
  );
  await part(page, 'Each step').getByRole('button', { name: 'transplanting' }).click();
  await expect(finding(page)).toContainText('in 3 batches, with an interval from');
  await expect(part(page, 'Batches of transplanting').locator('td.own')).toHaveText(['11.00', '12.00', '13.00']);
});

test('the watch times a batch from nothing, runs on through a reload, and all by keyboard', async ({ page }) => {
  await page.clock.install({ time: new Date(2031, 2, 9, 10, 0, 0) });
  await openTiming(page);
  await screen(page).getByRole('combobox', { name: 'Step' }).focus();
  await page.keyboard.type('lifting');
  await page.keyboard.press('Tab');
  await expect(screen(page).getByRole('button', { name: 'Start the watch' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(screen(page).getByRole('button', { name: 'Stop' })).toBeFocused();
  await page.clock.runFor(61_000);
  await expect(screen(page).getByRole('timer')).toContainText('1:01');
  await reload(page);
  await expect(screen(page)).toContainText('Timing lifting since 10:00:0');
  await page.clock.runFor(60_000);
  await screen(page).getByRole('button', { name: 'Stop' }).focus();
  await page.keyboard.press('Enter');
  await expect(screen(page).getByRole('textbox', { name: 'Plants in this batch of lifting' })).toBeFocused();
  await expect(screen(page)).toContainText(/From 10:00:0\d to 10:02:0\d/);
  await page.keyboard.press('Enter');
  await expect(screen(page)).toContainText('Count the plants of the batch.');
  await page.keyboard.type('10');
  await page.keyboard.press('Enter');
  await expect(finding(page)).toContainText(/Lifting took 12\.\d\ss a\splant in one batch/);
  await screen(page).getByRole('button', { name: 'Way, worker, date, step, note and why left out' }).click();
  await expect(screen(page).getByRole('textbox', { name: 'date, batch 1' })).toHaveValue('2031-03-09');
});

test('the terms move the finding, nonsense is explained and the last number stands', async ({ page }) => {
  await openTiming(page);
  await openTrials(page);
  const within = screen(page).getByRole('textbox', { name: 'within' });
  await within.fill('none');
  await expect(within).toHaveAccessibleDescription(/not a number: none.* 5 % stands/);
  await within.fill('11');
  await expect(finding(page)).toContainText('that is within 11 %, no more batches are needed');
  await screen(page).getByRole('radio', { name: 'the day (÷ 0.85)' }).check();
  await expect(finding(page)).toContainText('the standard time is 14.1 s');
  await screen(page).getByRole('textbox', { name: 'allowance' }).fill('100');
  await expect(screen(page).getByRole('alert')).toContainText('leaves no time to work');
  await expect(finding(page)).not.toContainText('standard time');
});

test('a time goes into the model with its range, and back in one step', async ({ page }) => {
  await openTiming(page);
  await openTrials(page, trials.replaceAll(',120,', ',240,'));
  const model = part(page, 'Into the model');
  const offer = model.getByRole('group', { name: 'transplanting' });
  await expect(offer.getByRole('combobox')).toHaveValue('transplant_time');
  const before = await headlineOf(page, 'Margin').first().innerText();
  await offer.getByRole('button', { name: /^Use 18/ }).click();
  await expect(fieldOf(page, 'Move a plant to a finishing board')).toHaveValue('18');
  await expect(model.getByRole('status')).toContainText('18 s per plant instead of 12 s per plant');
  expect(await headlineOf(page, 'Margin').first().innerText()).not.toBe(before);
  await expect(model.getByRole('button', { name: 'Take it back' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(fieldOf(page, 'Move a plant to a finishing board')).toHaveValue('12');
  await offer.getByRole('button', { name: /^Use it with its range/ }).click();
  await expect(offer).toContainText('The model has it.');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(fieldOf(page, 'Move a plant to a finishing board')).toHaveValue('12');
  await offer.getByRole('combobox').selectOption({ label: 'no entry' });
  await expect(offer.getByRole('button', { name: /^Use/ })).toHaveCount(0);
});

test('the results are saved as a table', async ({ page }) => {
  await openTiming(page);
  await openTrials(page);
  const { name, lines } = await savedLines(page, part(page, 'Each step').getByRole('table'));
  expect(name).toMatch(/ - Each step\.csv$/);
  expect(lines[1]).toMatch(/^Transplanting,4,12,10\.700\d+,13\.299\d+,8,13\.8,40,10,0,95,15,job,5$/i);
});

test('on paper are the results and the picture, and no fields or watch', async ({ page }) => {
  await openTiming(page);
  await openTrials(page);
  await expect(finding(page)).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(part(page, 'Each step')).toBeVisible();
  // The seconds of the batches, and whether the work gets quicker.
  for (const picture of [0, 1]) await expect(screen(page).getByRole('img').nth(picture)).toBeVisible();
  await expect(screen(page).getByRole('textbox')).toHaveCount(0);
  await expect(screen(page).getByText('Start the watch')).toBeHidden();
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 390]) {
    test(`axe finds nothing at ${width} px, ${colorScheme}`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 900 });
      await openTiming(page);
      await openTrials(page);
      await screen(page).getByRole('textbox', { name: 'plants, batch 2' }).fill('a dozen');
      await screen(page).getByRole('button', { name: 'Way, worker, date, step, note and why left out' }).click();
      await screen(page).getByText('The batches behind the picture').click();
      await screen(page).getByRole('button', { name: 'Start the watch' }).click();
      const { violations } = await new AxeBuilder({ page }).include('.timing').analyze();
      expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))).toEqual([]);
    });
  }
}

for (const width of [390, 320]) {
  test(`nothing is wider than ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 700 });
    await openTiming(page);
    await screen(page).getByRole('button', { name: 'Load invented trials' }).click();
    await screen(page)
      .getByRole('button', { name: /orker, date, step, note and why left out$/ })
      .click();
    await screen(page).getByRole('textbox', { name: 'seconds, batch 1' }).fill('a quarter of an hour or so');
    await screen(page).getByRole('button', { name: 'Start the watch' }).click();
    await expect(screen(page).getByRole('timer')).toBeVisible();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
}

/** Two ways of ten plants a batch: 14 s falling to 11, and 12 falling to 9; one batch by the bed went wrong. */
const twoWays = [
  'step,plants,seconds,date,lost,way',
  ...[142, 136, 131, 124, 126, 121, 300].map((s, i) => `transplanting,10,${s},2031-03-0${i + 1},1,at the bed`),
  ...[118, 112, 106, 109, 101, 103, 98].map((s, i) => `transplanting,10,${s},2031-03-0${i + 1},0,workbench`),
  '',
].join('\n');

test('two ways are compared, an odd batch is left out by hand, and the difference is worth money', async ({ page }) => {
  await openTiming(page);
  await openTrials(page, twoWays);
  const ways = part(page, 'Two ways of working');
  await expect(ways).toContainText('it cannot be told yet which is quicker');
  const odd = part(page, 'Batches of transplanting').locator('.odd');
  await expect(odd).toContainText(/Odd: 30\.00\ss each, the middle batch 13\.10\ss; a score of/);
  await odd.getByRole('button', { name: 'Leave it out' }).click();
  await expect(odd).toContainText('Left out: odd, see what happened.');
  await expect(ways).toContainText(/Workbench saves 2\.\d+\ss a\splant against at the bed, between 1\.\d+ and 3\.\d+/);
  await expect(ways).toContainText(/On this farm that is [\d,]+\sEUR\sa\syear more of Margin/);
  await expect(ways.getByRole('row')).toHaveCount(3);
  await odd.getByRole('button', { name: 'Count it again' }).click();
  await expect(ways).toContainText('it cannot be told yet which is quicker');
});

test('a run of batches shows learning, which goes into the model, and so does what is lost', async ({ page }) => {
  await openTiming(page);
  const learned = [300, 240, 211, 192, 179, 168].map((s, i) => `transplanting,10,${s},2031-03-0${i + 1},1`);
  await openTrials(page, ['step,plants,seconds,date,lost', ...learned, ''].join('\n'));
  const learning = part(page, 'Learning');
  await expect(learning).toContainText('Transplanting gets quicker: each doubling of the plants done');
  await expect(learning.getByRole('img', { name: /gets quicker/ })).toBeVisible();
  await learning.getByRole('textbox', { name: 'Seconds after so many plants' }).fill('1000');
  await expect(learning).toContainText(/After 1,?000 plants: \d+\.\d+\ss each/);
  await expect(learning).toContainText('The batches reach to 60 plants');
  await learning.getByRole('button', { name: /^Use [\d.]+\ss\/plant/ }).click();
  await expect(learning).toContainText(/Move a plant to a finishing board: [\d.]+\ss\sper\splant instead of/);
  const losses = part(page, 'Lost and culled');
  await expect(losses).toContainText(/6 of 60 plants lost or culled, 10\s%, between 4\.7\s% and 20\s%/);
  await losses.getByRole('combobox').selectOption({ label: 'Kept at the move, if there is one' });
  await losses.getByRole('button', { name: /^Use 90\s%/ }).click();
  await expect(losses).toContainText(/Kept at the move, if there is one: 90\s% instead of/);
});

test('trials of two phones are put together without doubles', async ({ page }) => {
  await openTiming(page);
  await openTrials(page);
  const add = async (name: string, text: string): Promise<void> => {
    const chooser = page.waitForEvent('filechooser');
    await screen(page).getByRole('button', { name: 'Add trials of another phone (CSV)' }).click();
    await (await chooser).setFiles(csvFile(name, text));
  };
  const other = trials.replace('10,110,A', '10,111,C');
  await add('hers.csv', other);
  await expect(screen(page)).toContainText(/hers\.csv: 1\sbatch added, 3 were there already\./);
  await add('hers.csv', other);
  await expect(screen(page)).toContainText(/hers\.csv: 0\sbatches added, 4 were there already\./);
  await expect(
    part(page, 'Each step')
      .getByRole('row', { name: /transplanting/ })
      .getByRole('cell')
      .first(),
  ).toHaveText('5');
});

test.describe('on a phone with wet hands', () => {
  test.use({ viewport: { width: 390, height: 844 } });

  test('one large control times batch after batch, the last one is taken back, and all outlasts a reload', async ({
    page,
  }) => {
    await page.clock.install({ time: new Date(2031, 2, 9, 10, 0, 0) });
    await page.addInitScript(() => {
      const asked: string[] = [];
      Object.assign(window, { asked });
      const request = (): Promise<EventTarget> => {
        asked.push('asked');
        const release = (): Promise<void> => Promise.resolve(void asked.push('released'));
        return Promise.resolve(Object.assign(new EventTarget(), { release }));
      };
      Object.defineProperty(navigator, 'wakeLock', { value: { request } });
    });
    await openTiming(page);
    await screen(page).getByRole('button', { name: 'Large watch for wet hands' }).click();
    const watch = page.getByRole('dialog', { name: 'Large watch for wet hands' });
    await expect(watch.getByRole('button', { name: /^Start/ })).toBeDisabled();
    await watch.getByRole('textbox', { name: 'Step' }).fill('lifting');
    await watch.getByRole('textbox', { name: 'Plants in each batch' }).fill('0');
    await expect(watch).toContainText('plants not a whole number above 0: 0.');
    await watch.getByRole('textbox', { name: 'Plants in each batch' }).fill('10');
    await watch.getByRole('textbox', { name: /^Way of working/ }).fill('workbench');
    await watch.getByRole('button', { name: /^Start/ }).click();
    const done = watch.getByRole('button', { name: /^Batch done/ });
    const box = (await done.boundingBox())!;
    expect([box.width, box.y + box.height]).toEqual([390, 844]);
    expect(box.height).toBeGreaterThanOrEqual(420);
    await page.clock.runFor(60_000);
    await done.click();
    await expect(watch).toContainText(/Last batch: 10 plants in 60\.\d s\./);
    for (const button of await watch.getByRole('button').all()) {
      expect((await button.boundingBox())!.height).toBeGreaterThanOrEqual(44);
    }
    await page.clock.runFor(30_000);
    await watch.getByRole('button', { name: 'Take the last one back' }).click();
    await expect(watch.getByRole('timer')).toContainText('1:3');
    await page.waitForTimeout(600);
    await page.reload();
    await expect(watch.getByRole('timer')).toContainText('1:3');
    await page.clock.runFor(60_000);
    await done.click();
    await expect(watch).toContainText(/Last batch: 10 plants in 15\d\.\d s\./);
    expect(await page.evaluate(() => (window as unknown as { asked: string[] }).asked)).toEqual(['asked']);
    await watch.getByRole('button', { name: 'End without this one' }).click();
    await expect
      .poll(() => page.evaluate(() => (window as unknown as { asked: string[] }).asked.at(-1)))
      .toBe('released');
    await watch.getByRole('button', { name: 'Close' }).click();
    await expect(watch).toBeHidden();
    await expect(finding(page)).toContainText(/Lifting took 15\.\d\ss a\splant in one batch/);
  });

  test('the screen is kept on again once the page comes back into sight', async ({ page }) => {
    await page.addInitScript(() => {
      const locks: EventTarget[] = [];
      let seen = true;
      const request = (): Promise<EventTarget> => {
        if (!seen) return Promise.reject(new Error('hidden'));
        const lock = Object.assign(new EventTarget(), { release: () => Promise.resolve() });
        locks.push(lock);
        return Promise.resolve(lock);
      };
      // As browsers do it: hidden, the page loses its lock and may not ask for another.
      const show = (is: boolean): void => {
        seen = is;
        Object.defineProperty(document, 'visibilityState', { value: is ? 'visible' : 'hidden', configurable: true });
        if (!is) locks.at(-1)?.dispatchEvent(new Event('release'));
        document.dispatchEvent(new Event('visibilitychange'));
      };
      Object.defineProperty(navigator, 'wakeLock', { value: { request } });
      Object.assign(window, { locks, show });
    });
    const asked = (): Promise<number> => page.evaluate(() => (window as unknown as { locks: unknown[] }).locks.length);
    const show = (is: boolean): Promise<void> =>
      page.evaluate((seen) => (window as unknown as { show: (is: boolean) => void }).show(seen), is);
    await openTiming(page);
    await screen(page).getByRole('button', { name: 'Large watch for wet hands' }).click();
    const watch = page.getByRole('dialog', { name: 'Large watch for wet hands' });
    await watch.getByRole('textbox', { name: 'Step' }).fill('lifting');
    await watch.getByRole('textbox', { name: 'Plants in each batch' }).fill('10');
    await watch.getByRole('button', { name: /^Start/ }).click();
    await expect(watch).toContainText('The screen stays on');
    expect(await asked()).toBe(1);
    await show(false);
    await expect(watch).not.toContainText('The screen stays on');
    expect(await asked()).toBe(1);
    await show(true);
    await expect(watch).toContainText('The screen stays on');
    expect(await asked()).toBe(2);
    await watch.getByRole('button', { name: 'End without this one' }).click();
    await show(false);
    await show(true);
    expect(await asked()).toBe(2);
  });
});
