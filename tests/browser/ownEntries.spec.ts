import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { fieldOf, headlineOf, labelOf, openApp, openNursery, rowOf, savedFile } from './page';
import { expect, test } from './quietPage';

const said = (page: Page): Locator => page.locator('.said-line');

/** Opens what can be done with an entry. */
async function ask(page: Page, label: string): Promise<Locator> {
  const row = rowOf(page, label);
  await labelOf(page, label).click();
  await expect(row.getByRole('button', { name: 'Delete it' })).toBeVisible();
  return row;
}

async function formulaOf(page: Page, label: string): Promise<Locator> {
  const row = await ask(page, label);
  await row.getByText(/^Change its formula/).click();
  return row.getByRole('textbox', { name: 'In every plan' });
}

async function addRent(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Add a cost or return' }).click();
  await expect(page.getByLabel('What is it?')).toBeFocused();
  await page.keyboard.type('Extra rent');
  await page.getByLabel('How much, EUR').fill('300');
  await page.getByRole('checkbox', { name: 'Straight to finishing' }).uncheck();
  await page.keyboard.press('Tab');
  await page.getByLabel('How much, EUR').press('Enter');
}

test('a cost of 300 a month in one plan alone takes 3,600 from that margin, and nothing from the other', async ({
  page,
}) => {
  await openApp(page);
  const margin = headlineOf(page, 'Margin').first();
  await expect(margin).toContainText('15,671');
  await expect(margin).toContainText('19,511');
  await addRent(page);
  await expect(said(page)).toContainText(
    'Extra rent. In the budget of Nursery first: 3,600 EUR a year. Costs and everything made from it follow.',
  );
  await expect(fieldOf(page, 'Extra rent, amount')).toBeFocused();
  await expect(margin).toContainText('15,671');
  await expect(margin).toContainText('15,911');
  await expect(margin.locator('.change', { hasText: '−3,600' }).first()).toBeVisible();
  await fieldOf(page, 'Extra rent, amount').fill('100');
  await expect(margin).toContainText('18,311');
  const file = new TextDecoder().decode((await savedFile(page)).bytes);
  expect(file).toContain('extra_rent_amount,"Extra rent, amount",EUR/month,100,');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(margin).toContainText('19,511');
  await expect(rowOf(page, 'Extra rent')).toHaveCount(0);
});

test('a cost that is deleted takes its amount with it where that is asked, in one step', async ({ page }) => {
  await openApp(page);
  await addRent(page);
  const row = await ask(page, 'Extra rent');
  await row.getByRole('button', { name: 'Delete it' }).click();
  await expect(row).toContainText('Nothing else uses Extra rent, amount.');
  await row.getByRole('button', { name: 'Yes, and Extra rent, amount with it' }).click();
  await expect(said(page)).toContainText('Extra rent is deleted, and with it Extra rent, amount.');
  await expect(labelOf(page, 'Extra rent, amount')).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(labelOf(page, 'Extra rent')).toBeVisible();
  await expect(labelOf(page, 'Extra rent, amount')).toBeVisible();
});

test('what is not filled in is asked for under its field', async ({ page }) => {
  await openApp(page);
  await page.getByRole('button', { name: 'Add a cost or return' }).click();
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(page.getByLabel('What is it?')).toHaveAccessibleDescription(/Say in a word or two what it is\./);
  await expect(page.getByLabel('How much, EUR')).toHaveAttribute('aria-invalid', 'true');
  await page.getByLabel('How often').selectOption('for each hour');
  await expect(page.getByLabel('What is counted')).toContainText('Hours paid to the hire, h/week');
  await page.getByLabel('What is it?').press('Escape');
  await expect(page.getByRole('button', { name: 'Add a cost or return' })).toBeFocused();
});

test('a model that adds up no year says so, and offers an ordinary entry', async ({ page }) => {
  await openNursery(page);
  await page.getByRole('button', { name: 'Add a cost or return' }).click();
  await expect(page.getByText(/adds up no costs of a year/)).toBeVisible();
  await page.locator('.own-form').getByRole('button', { name: 'Add an entry' }).click();
  await page.getByLabel('What is it?').fill('Rent');
  await page.getByLabel('Number or formula').fill('300 +');
  await page.getByLabel('Unit').fill('EUR/moon');
  await page.getByLabel('Unit').press('Enter');
  await expect(page.getByLabel('Unit')).toHaveAttribute('aria-invalid', 'true');
  await page.getByLabel('Unit').fill('EUR/month');
  await page.getByLabel('Unit').press('Enter');
  await expect(page.getByLabel('Number or formula')).toHaveAttribute('aria-invalid', 'true');
  await page.getByLabel('Number or formula').fill('300');
  await page.getByLabel('Number or formula').press('Enter');
  await expect(fieldOf(page, 'Rent')).toBeFocused();
  await expect(rowOf(page, 'Rent')).toContainText('EUR/month');
});

test('an entry is added at the end of its heading', async ({ page }) => {
  await openNursery(page);
  await page.getByRole('button', { name: 'Add an entry under Plants' }).click();
  await expect(page.getByLabel('What is it?')).toBeFocused();
  await page.keyboard.type('Trays');
  await page.getByLabel('Number or formula').fill('heads / 12');
  await page.getByLabel('Unit').fill('plant/year');
  await page.getByLabel('Unit').press('Enter');
  await expect(page.locator('.group', { hasText: 'Plants' }).first().locator('.ask').last()).toHaveText('Trays');
  await expect(rowOf(page, 'Trays')).toContainText('19,167');
});

test('a label, a unit and a name are changed; every formula follows, and a word of formulas is refused', async ({
  page,
}) => {
  await openNursery(page);
  const row = await ask(page, 'Wage');
  await row.getByText('Change its label, unit or note').click();
  await row.getByText('Its name in formulas').first().click();
  const name = row.getByRole('textbox', { name: 'Its name in formulas' });
  await name.fill('min');
  await name.press('Enter');
  await expect(name).toHaveAccessibleDescription(/name has a meaning in formulas: min/);
  await name.fill('price');
  await name.press('Enter');
  await expect(name).toHaveAccessibleDescription(/“Price” has it already/);
  await name.fill('pay');
  await name.press('Enter');
  await expect(said(page)).toContainText('Wage is pay in formulas now. So it is in the formula that names it.');
  await row.getByRole('textbox', { name: 'Label' }).fill('Pay');
  await row.getByRole('textbox', { name: 'Label' }).press('Enter');
  await expect(labelOf(page, 'Pay')).toBeVisible();
  const file = new TextDecoder().decode((await savedFile(page)).bytes);
  expect(file).toContain('pay,Pay,EUR/h,14.5,');
  expect(file).toContain('heads * move_time * pay * (1 + on_cost)');
  await rowOf(page, 'Pay').getByRole('textbox', { name: 'Unit' }).fill('EUR/plant');
  await rowOf(page, 'Pay').getByRole('textbox', { name: 'Unit' }).press('Enter');
  await expect(said(page)).toContainText('Pay is in EUR/plant now. Hands needs another formula now.');
  await said(page).getByRole('button', { name: 'Take it back' }).click();
  await expect(headlineOf(page, 'Margin')).toContainText('166,060');
});

test('what uses an entry is listed before it is deleted, and it comes back', async ({ page }) => {
  await openNursery(page);
  const row = await ask(page, 'Hands');
  await row.getByRole('button', { name: 'Delete it' }).click();
  const asking = row.getByRole('group', { name: 'Delete Hands?' });
  await expect(asking).toContainText('It is taken out of the sums that it is a part of: Margin');
  await expect(asking).toContainText(/left with a fault until they are changed: Cost of a plant/);
  await asking.getByRole('button', { name: 'Keep it' }).click();
  await expect(row.getByRole('button', { name: 'Delete it' })).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await expect(rowOf(page, 'Hands')).toHaveCount(0);
  await expect(said(page)).toContainText('Hands is deleted. It is taken out of Margin. Cost of a plant needs another');
  await expect(headlineOf(page, 'Margin')).toContainText('179,400');
  await expect(said(page).getByRole('button', { name: 'Take it back' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(labelOf(page, 'Hands')).toBeFocused();
  await expect(headlineOf(page, 'Margin')).toContainText('166,060');
});

test('an entry is copied and moved by keyboard', async ({ page }) => {
  await openNursery(page);
  const row = await ask(page, 'Wage');
  await row.getByRole('button', { name: 'Move down' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.entry .ask').nth(1)).toHaveText('Wage');
  await expect(rowOf(page, 'Wage').getByRole('button', { name: 'Move down' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('.entry .ask').nth(2)).toHaveText('Wage');
  await rowOf(page, 'Wage').getByRole('button', { name: 'Copy it' }).click();
  await expect(fieldOf(page, 'Wage, copy')).toBeFocused();
  await expect(page.locator('.entry .ask').nth(3)).toHaveText('Wage, copy');
});

test('names are completed by keyboard, the unit is said, and undo keys stay undo keys', async ({ page }) => {
  await openNursery(page);
  const formula = await formulaOf(page, 'Cost of a plant');
  await formula.fill('');
  await page.keyboard.type('han');
  const list = page.getByRole('listbox', { name: 'Names that fit' });
  await expect(list.getByRole('option')).toHaveText(['hands Hands, EUR/year']);
  await page.keyboard.press('Enter');
  await expect(formula).toHaveValue('hands');
  await expect(list).toHaveCount(0);
  await page.keyboard.type(' / he');
  await expect(list.getByRole('option')).toHaveCount(3);
  await page.keyboard.press('ArrowDown');
  await expect(list.getByRole('option').nth(1)).toHaveAttribute('aria-selected', 'true');
  await page.keyboard.press('Tab');
  await expect(formula).toHaveValue('hands / heads_straight');
  await expect(formula).toBeFocused();
  await expect(page.locator('.gives')).toHaveText('Gives EUR/plant.');
  await page.keyboard.type(' + wa');
  await page.keyboard.press('Escape');
  await expect(list).toHaveCount(0);
  await expect(formula).toHaveValue('hands / heads_straight + wa');
  await page.keyboard.press('Escape');
  await expect(formula).toHaveValue('hands / heads');
  await formula.fill('hands / heads * 2');
  await formula.press('ControlOrMeta+z');
  await expect(formula).toHaveValue('hands / heads');
});

test('a function is offered with how it is written', async ({ page }) => {
  await openNursery(page);
  const formula = await formulaOf(page, 'Cost of a plant');
  await formula.fill('');
  await page.keyboard.type('max');
  await expect(page.getByRole('option', { name: /max\(a, …\) The largest/ })).toBeVisible();
  await page.keyboard.type('(hands, 0) / heads');
  await expect(formula).not.toHaveAttribute('aria-invalid');
});

test('a formula that cannot be taken is mended by one press', async ({ page }) => {
  await openNursery(page);
  const formula = await formulaOf(page, 'Margin');
  await formula.fill('=sales − 2 x hands');
  await page.getByRole('button', { name: 'Write sales - 2 * hands' }).click();
  await expect(formula).toHaveValue('sales - 2 * hands');
  await expect(formula).toBeFocused();
  await expect(headlineOf(page, 'Margin')).toContainText('152,720');
  await formula.fill('sales - hand');
  await page.getByRole('button', { name: 'Use hands' }).click();
  await expect(headlineOf(page, 'Margin')).toContainText('166,060');
  await formula.fill('sales - hands - 300 EUR/month * 12');
  await page.getByRole('button', { name: 'Make 300 an entry of its own' }).click();
  await expect(headlineOf(page, 'Margin')).toContainText('162,460');
  await expect(fieldOf(page, 'Margin, amount')).toHaveValue('300');
  await expect(formula).toHaveValue('sales - hands - margin_part');
  await said(page).getByRole('button', { name: 'Take it back' }).click();
  await expect(headlineOf(page, 'Margin')).toContainText('166,060');
  await expect(formula).toHaveValue('sales - hands');
});

test('the currency of the whole model is another, its figures kept or multiplied, in one step', async ({ page }) => {
  await openNursery(page);
  await page.getByRole('button', { name: 'Currency and units' }).click();
  await page.getByLabel('are multiplied').check();
  await page.getByRole('button', { name: 'Write USD for EUR' }).click();
  await expect(page.getByLabel('One EUR is how many USD?')).toHaveAttribute('aria-invalid', 'true');
  await page.getByLabel('One EUR is how many USD?').fill('2');
  await page.getByRole('button', { name: 'Write USD for EUR' }).click();
  await expect(said(page)).toContainText('USD stands for EUR in 6 entries now. Their figures are multiplied by 2.');
  await expect(fieldOf(page, 'Wage')).toHaveValue('29');
  await expect(headlineOf(page, 'Margin')).toContainText('332,120');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(fieldOf(page, 'Wage')).toHaveValue('14.5');
  await expect(headlineOf(page, 'Margin')).toContainText('EUR/year');
});

test('a limit that may be absent is lifted by one press', async ({ page }) => {
  await openApp(page);
  const row = rowOf(page, 'Heads that the cold store holds');
  await row.getByRole('button', { name: 'none: no limit for Heads that the cold store holds' }).click();
  await expect(fieldOf(page, 'Heads that the cold store holds')).toHaveValue('0');
  await expect(row).toContainText('no limit');
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [1440, 390]) {
    test(`axe finds nothing at ${width} px, ${colorScheme}, and nothing runs out of the page`, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 900 });
      await openNursery(page);
      const row = await ask(page, 'Hands');
      await row.getByText('Change its label, unit or note').click();
      await row.getByRole('button', { name: 'Copy it' }).click();
      await row.getByRole('button', { name: 'Delete it' }).click();
      await page.getByRole('button', { name: 'Currency and units' }).click();
      await page.getByRole('button', { name: 'Add an entry under Plants' }).click();
      await expect(page.getByLabel('Number or formula')).toBeVisible();
      const formula = await formulaOf(page, 'Cost of a plant');
      await formula.fill('');
      await formula.pressSequentially('1 + he');
      await expect(page.getByRole('listbox')).toBeVisible();
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    });
  }
}
