import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { margins } from './nursery';
import { chooseFile, csvFile, fieldOf, labelOf, openApp, openNursery } from './page';
import { expect, test } from './quietPage';

const picture = (page: Page): Locator => page.getByRole('group', { name: 'Entries and the arrows between them' });

/** The box of an entry, by the beginning of its name. */
const boxOf = (page: Page, label: string): Locator => picture(page).locator(`[role=button][aria-label^="${label},"]`);
const middle = (page: Page): Locator => picture(page).locator('[role=button][aria-label$=", in the middle"]');
const finding = (page: Page): Locator => page.locator('.together .finding');

/** Laying out a whole model takes a moment, and many on a machine that has other work. */
const aMoment = { timeout: 30_000 };

/** Opens the picture around an entry from its row. */
async function openAround(page: Page, label: string): Promise<void> {
  await labelOf(page, label).click();
  await page.locator('.asked-panel').getByRole('button', { name: 'See how it hangs together' }).click();
  await expect(middle(page)).toHaveAttribute('aria-label', new RegExp(`^${label},`), aMoment);
}

/** Opens the picture of the whole model from the head of the numbers. */
async function openWhole(page: Page): Promise<void> {
  await page.locator('.numbers-head').getByRole('button', { name: 'See how it hangs together' }).click();
  await expect(picture(page).getByRole('button').first()).toBeAttached(aMoment);
}

async function places(page: Page): Promise<(string | null)[]> {
  return picture(page)
    .getByRole('button')
    .evaluateAll((all) => all.map((one) => one.getAttribute('transform')));
}

test('from an entry to its neighbours, to the row of one, and back', async ({ page }) => {
  await openNursery(page);
  await openAround(page, 'Margin');
  await expect(finding(page)).toHaveText('Margin hangs on 10 entries, 7 of them inputs; the longest way has 3 steps.');
  await boxOf(page, 'Hands').click();
  await expect(middle(page)).toHaveAttribute('aria-label', /^Hands,/);
  await expect(boxOf(page, 'Wage')).toBeVisible();
  await page.getByRole('button', { name: 'Back to Margin' }).click();
  await expect(middle(page)).toHaveAttribute('aria-label', /^Margin,/);
  await boxOf(page, 'Sales').click();
  await boxOf(page, 'Price').click();
  await page.getByRole('button', { name: 'Go to its row in Numbers' }).click();
  await expect(fieldOf(page, 'Price')).toBeFocused();
});

test('values change while somebody types, and no box moves', async ({ page }) => {
  await openNursery(page);
  await openAround(page, 'Margin');
  await expect(boxOf(page, 'Margin')).toContainText(margins.nursery);
  const before = await places(page);
  await fieldOf(page, 'Price').fill('1234567.5');
  await expect(boxOf(page, 'Margin')).not.toContainText(margins.nursery);
  await expect(boxOf(page, 'Sales')).toContainText('283,950,525,000');
  expect(await places(page)).toEqual(before);
});

test('by keyboard: from box to box, one put in the middle, which keeps the focus', async ({ page }) => {
  await openNursery(page);
  await openAround(page, 'Sales');
  await page.getByRole('region', { name: 'The picture; it scrolls' }).focus();
  await page.keyboard.press('Tab');
  await expect(boxOf(page, 'Sales')).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await expect(boxOf(page, 'Margin')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(middle(page)).toHaveAttribute('aria-label', /^Margin,/);
  await expect(boxOf(page, 'Margin')).toBeFocused();
  await page.keyboard.press('ArrowLeft');
  await expect(picture(page).locator(':focus')).toHaveAttribute('aria-label', /^(?:Sales|Hands),/);
});

test('an arrow that holds in one plan alone says which', async ({ page }) => {
  await openNursery(page);
  await openAround(page, 'Heads a year');
  const letters = picture(page).locator('.together-arrow text');
  await expect(letters).toHaveText(['A', 'B']);
  await expect(page.getByText('only in plan Nursery first')).toBeVisible();
});

test('the whole model, read in its table too', async ({ page }) => {
  await openNursery(page);
  await openWhole(page);
  await expect(finding(page)).toHaveText(
    'The model has 14 entries, 8 of them inputs; the longest way has 3 steps and leads to Margin.',
  );
  await expect(picture(page).getByRole('button')).toHaveCount(14);
  const rows = page.getByRole('region', { name: 'Table of the entries' }).getByRole('row');
  await expect(rows).toHaveCount(15);
  await expect(rows.filter({ hasText: 'Margin' })).toContainText(`${margins.straight} EUR/year`);
  await rows.filter({ hasText: 'Margin' }).getByRole('button').click();
  await expect(middle(page)).toHaveAttribute('aria-label', /^Margin,/);
});

test('the whole width of the page, and the way from there to a row', async ({ page }) => {
  await openApp(page);
  await openAround(page, 'Margin');
  await page.getByRole('button', { name: 'Use the whole width' }).click();
  await expect(fieldOf(page, 'Price of a head')).toBeHidden();
  await boxOf(page, 'Costs').click();
  await page.getByRole('button', { name: 'Go to its row in Numbers' }).click();
  await expect(labelOf(page, 'Costs')).toBeVisible();
  await expect(labelOf(page, 'Costs')).toBeFocused();
});

test('a picture that is too large to read is seen whole or at a size to read', async ({ page }) => {
  await openApp(page);
  await openWhole(page);
  const room = page.getByRole('region', { name: 'The picture; it scrolls' });
  const overflow = (): Promise<boolean> =>
    room.evaluate(({ scrollWidth, clientWidth, scrollHeight, clientHeight }) =>
      [scrollWidth - clientWidth, scrollHeight - clientHeight].some((over) => over > 1),
    );
  expect(await overflow()).toBe(false);
  await page.getByRole('button', { name: 'Readable size' }).click();
  await expect.poll(overflow).toBe(true);
  const size = await boxOf(page, 'Margin')
    .locator('.value')
    .first()
    .evaluate((text) => text.getBoundingClientRect().height);
  expect(size).toBeGreaterThan(12);
});

test('on paper it is as wide as the page at most, and whole', async ({ page }) => {
  await openApp(page);
  await openWhole(page);
  await page.getByRole('button', { name: 'Readable size' }).click();
  await page.emulateMedia({ media: 'print' });
  // A4 lying, less margins of 15 mm.
  await page.setViewportSize({ width: 1009, height: 680 });
  const svg = await page.locator('.together-picture').boundingBox();
  expect(svg!.width).toBeLessThanOrEqual(1009);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1009);
  const outside = await page.locator('.together-box').evaluateAll((all) => {
    const sheet = document.querySelector('.together-room')!.getBoundingClientRect();
    return all
      .map((one) => one.getBoundingClientRect())
      .filter(({ left, right }) => left < sheet.left - 1 || right > sheet.right + 1).length;
  });
  expect(outside).toBe(0);
  await expect(page.locator('.together-box .label').first()).toBeVisible();
});

test('a model of 10,000 entries is looked at around one of them', async ({ page }) => {
  test.slow();
  const rows = Array.from(
    { length: 10_000 },
    (_, i) => `x${i},Entry ${i},${i < 200 ? i + 1 : `x${i % 200} + x${i - 1}`}`,
  );
  await openApp(page);
  await chooseFile(page, csvFile('large.csv', ['name,label,formula', ',Large,', ...rows, ''].join('\n')));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Large');
  await page.locator('.numbers-head').getByRole('button', { name: 'See how it hangs together' }).click();
  await expect(page.getByText('So many are not drawn')).toBeVisible();
  await expect(picture(page)).toHaveCount(0);
  await page.getByRole('radio', { name: 'around one entry' }).check();
  await page.getByRole('radio', { name: 'all', exact: true }).check();
  await expect(picture(page).getByRole('button')).toHaveCount(150, aMoment);
  await expect(page.getByText(/further away are left out/)).toBeVisible();
});

for (const [width, colorScheme] of [
  [1440, 'light'],
  [390, 'dark'],
] as const) {
  test(`axe finds nothing in it, and nothing is wider than the page, ${width} px, ${colorScheme}`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.setViewportSize({ width, height: 900 });
    await openNursery(page);
    await openWhole(page);
    const { violations } = await new AxeBuilder({ page }).include('.together').analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
}
