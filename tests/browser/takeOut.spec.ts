import type { Locator, Page } from '@playwright/test';
import { parseRecords } from '../../src/files/csv';
import { csvFile, openApp } from './page';
import { expect, test } from './quietPage';
import { choicesAfter, fileBy } from './takingOut';

const screens = ['Plans', 'Beds', 'What matters', 'Breakeven', 'How sure', 'Timing', 'The case'] as const;

async function show(page: Page, screen: string): Promise<Locator> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: screen }).click();
  const shown = page.locator(`.question-screen.${screen.toLowerCase().replaceAll(' ', '-')}`);
  await expect(shown).toBeVisible();
  return shown;
}

/** A few timed batches, without which there is nothing to show. */
async function openTrials(page: Page, shown: Locator): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await shown.getByRole('button', { name: 'Open trials (CSV)' }).click();
  await (await chooser).setFiles(csvFile('mine.csv', 'step,plants,seconds\nmoving,10,110\nmoving,10,130\n'));
  await expect(shown.getByRole('img').first()).toBeVisible();
}

/** Brings every part of a screen into sight, unfolds all of it, and waits until nothing is being worked out. */
async function unfold(page: Page, shown: Locator): Promise<void> {
  await expect(async () => {
    await shown.evaluate(async (screen) => {
      for (const part of screen.querySelectorAll('.part, .wait')) {
        part.scrollIntoView();
        await new Promise((done) => setTimeout(done, 100));
      }
    });
    await shown.evaluate((screen) => {
      const folded = 'details:not([open], .take-out, .dropdown)';
      for (const each of screen.querySelectorAll<HTMLDetailsElement>(folded)) each.open = true;
    });
    await page.waitForTimeout(200);
    await expect(shown.locator('.wait, .waiting, .busy, progress')).toHaveCount(0, { timeout: 100 });
    await expect(shown.locator('details:not([open], .take-out, .dropdown)')).toHaveCount(0, { timeout: 100 });
  }).toPass({ timeout: 60_000 });
}

/** The tables that no button of their own takes out. */
function withoutButton(screen: Element): string[] {
  const isTakenOut = (table: Element): boolean => {
    const room = table.closest('.table-room') ?? table;
    return room.nextElementSibling?.matches('details.take-out') === true;
  };
  return [...screen.querySelectorAll('table')]
    .filter((table) => !isTakenOut(table))
    .map((table) => table.outerHTML.slice(0, 200));
}

/** The charts that no button takes out: none stands after them in their figure. */
function chartsWithoutButton(screen: Element): string[] {
  return [...screen.querySelectorAll('canvas[role="img"], svg[role="img"]')]
    .filter((chart) => chart.closest('figure')?.querySelector('details.take-out') === null)
    .map((chart) => chart.getAttribute('aria-label') ?? '');
}

for (const screen of screens) {
  test(`every table and every chart of “${screen}” can be taken out, and its first table reads as it stands`, async ({
    page,
  }) => {
    test.setTimeout(120_000);
    await openApp(page);
    const shown = await show(page, screen);
    if (screen === 'Timing') await openTrials(page, shown);
    await unfold(page, shown);
    expect(await shown.evaluate(withoutButton)).toEqual([]);
    expect(await shown.evaluate(chartsWithoutButton)).toEqual([]);
    const table = shown.locator('table').first();
    await expect(table).toBeVisible();
    const choices = choicesAfter(table);
    await choices.locator('summary').click();
    const { name, bytes } = await fileBy(page, choices, 'Save it as CSV');
    expect(name).toMatch(/^Does it pay to hire a transplanter - \S.*\.csv$/);
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    const records = parseRecords(bytes.toString('utf8'), ',');
    expect(records.length).toBeGreaterThan(1);
    expect(new Set(records.map(({ fields }) => fields.length)).size).toBe(1);
    const last = await table.locator('tbody tr').last().locator('td, th').allInnerTexts();
    const numbers = last.flatMap((text) => /^[+−]?[\d,.]*\d$/.exec(text.trim()) ?? []);
    const taken = new Set(records.flatMap(({ fields }) => fields));
    for (const number of numbers) expect(taken).toContain(number.replace(/[+,]/g, '').replace('−', '-'));
    await expect(choices.getByRole('status')).toHaveText(`Saved as ${name}.`);
  });
}

test('numbers are rounded as shown or have all their digits, which is remembered', async ({ page }) => {
  await openApp(page);
  const shown = await show(page, 'Plans');
  const table = shown.locator('.table-room table').first();
  const choices = choicesAfter(table);
  await choices.locator('summary').click();
  const margin = async (): Promise<string[]> => {
    const { bytes } = await fileBy(page, choices, 'Save it as CSV');
    const records = parseRecords(bytes.toString('utf8'), ',');
    return [...(records.find(({ fields }) => fields[0] === 'Margin')?.fields ?? [])];
  };
  const onScreen = await table.locator('tr', { hasText: 'Margin' }).first().locator('.plan-value').allTextContents();
  const rounded = await margin();
  expect(rounded.slice(1, 4)).toEqual(['EUR/year', ...onScreen.map((text) => text.replaceAll(',', ''))]);
  await choices.getByRole('radio', { name: 'with all digits' }).check();
  const full = await margin();
  expect(full[2]!.length).toBeGreaterThan(20);
  expect(Math.round(Number(full[2]))).toBe(Number(rounded[2]));
  await page.reload();
  await choicesAfter(page.locator('.plans .table-room table').first()).locator('summary').click();
  await expect(page.getByRole('radio', { name: 'with all digits' })).toBeChecked();
});

test('a table is copied as text and as a table; where the browser refuses, it says what to do', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openApp(page);
  const shown = await show(page, 'Plans');
  const choices = choicesAfter(shown.locator('.table-room table').first());
  await choices.locator('summary').press('Enter');
  await choices.getByRole('button', { name: 'Copy the table' }).click();
  await expect(choices.getByRole('status')).toHaveText('Copied.');
  const copied = await page.evaluate(async () => {
    const [item] = await navigator.clipboard.read();
    const read = async (type: string): Promise<string> => (await item!.getType(type)).text();
    return { text: await read('text/plain'), html: await read('text/html') };
  });
  expect(copied.text.split('\n')[0]).toMatch(/^Result\tunit of Result\t/);
  expect(copied.html).toContain('<th dir="auto">Margin</th>');
  await page.evaluate(() => {
    Object.defineProperty(navigator, 'clipboard', { value: undefined, configurable: true });
  });
  await choices.getByRole('button', { name: 'Copy the table' }).click();
  await expect(choices.getByRole('status')).toContainText('Save the table as CSV and open that file instead.');
});

test('a chart is saved as SVG and as PNG in light colours, with its sentence and where it comes from', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openApp(page);
  const shown = await show(page, 'Breakeven');
  const figure = shown.locator('figure').first();
  const sentence = await figure.locator('canvas').getAttribute('aria-label');
  const choices = figure.locator('.take-out');
  await choices.locator('summary').click();
  const svg = await fileBy(page, choices, 'as SVG');
  expect(svg.name).toMatch(/\.svg$/);
  const found = await page.evaluate((text) => {
    const read = new DOMParser().parseFromString(text, 'image/svg+xml');
    const texts = [...read.querySelectorAll('text')].map(({ textContent }) => textContent);
    return {
      wrong: read.querySelector('parsererror') !== null,
      ground: read.querySelector('rect[width="760"]')?.getAttribute('fill'),
      said: texts.join(' '),
    };
  }, svg.bytes.toString('utf8'));
  expect(found.wrong).toBe(false);
  expect(found.ground).toBe('#faf6ec');
  expect(found.said).toContain((sentence ?? '').slice(0, 40));
  expect(found.said).toMatch(/Does it pay to hire a transplanter\?.* · Raftmargin$/);
  const png = await fileBy(page, choices, 'as PNG');
  expect(png.bytes.subarray(1, 4).toString()).toBe('PNG');
  // Width and height stand after the signature and the head of the first chunk.
  expect(png.bytes.readUInt32BE(16)).toBe(1520);
  expect(png.bytes.readUInt32BE(20)).toBeGreaterThan(800);
});

test('on a phone the button and the choices are large enough for a finger, and paper has none of them', async ({
  browser,
}) => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  const page = await context.newPage();
  await openApp(page);
  const shown = await show(page, 'Plans');
  const choices = choicesAfter(shown.locator('.table-room table').first());
  await choices.locator('summary').tap();
  const buttons = [choices.locator('summary'), ...(await choices.getByRole('button').all())];
  for (const button of buttons) expect((await button.boundingBox())!.height).toBeGreaterThanOrEqual(44);
  for (const label of await choices.locator('label').all()) {
    expect((await label.boundingBox())!.height).toBeGreaterThanOrEqual(44);
  }
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(390);
  await page.emulateMedia({ media: 'print' });
  await expect(choices).toBeHidden();
  await context.close();
});
