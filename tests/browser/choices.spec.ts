import { chooseFile, csvFile, labelOf, openApp, rowOf, savedFile } from './page';
import { expect, test } from './quietPage';

// Money of a week by hand: 100 plugs at 0.05 or 0.09 EUR.
const plugs = [
  'name,label,unit,formula,role,choices,plan: Today,plan: Tomorrow',
  ',Which plug? A made-up case,,,,,,',
  'plug,Plug in use,,1,,1 one-use plug; 2 reusable plug,,2',
  'washing,Washed by hand,,1,,0 no; 1 yes,,',
  'count,Plugs a week,plug/week,100,,,,',
  'cheap,One-use,EUR/plug,0.05,,,,',
  'dear,Reusable,EUR/plug,0.09,,,,',
  'cost,Cost of plugs,EUR/week,count * (plug == 2 ? dear : cheap),headline,,,',
  '',
].join('\n');

test('a switch is chosen by its words, and undone', async ({ page }) => {
  await openApp(page);
  const plug = rowOf(page, 'Plug in use').getByRole('combobox');
  await expect(plug.locator('option')).toHaveText(['one-use plug', 'reusable plug']);
  await expect(plug).toHaveValue('1');
  const year = rowOf(page, 'Plugs').locator('.value').first();
  const before = (await year.textContent()) ?? '';
  await plug.selectOption('reusable plug');
  await expect(year).not.toHaveText(before);
  expect(new TextDecoder().decode((await savedFile(page)).bytes)).toContain('plug_choice,Plug in use,,2,');
  await plug.press('Control+z');
  await expect(plug).toHaveValue('1');
  await expect(year).toHaveText(before);
});

for (const width of [1440, 390]) {
  test(`each plan has its own, and its words stand wherever its number would, ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await openApp(page);
    await chooseFile(page, csvFile('plugs.csv', plugs));
    const lists = rowOf(page, 'Plug in use').getByRole('combobox');
    await expect(lists).toHaveCount(2);
    await expect(lists.nth(0)).toHaveValue('1');
    await expect(lists.nth(1)).toHaveValue('2');
    await expect(lists.nth(1)).toHaveAccessibleName('Plug in use, own number of plan Tomorrow');
    await expect(rowOf(page, 'Washed by hand').getByRole('combobox')).toHaveCount(1);
    await lists.nth(1).selectOption('one-use plug');
    await expect(rowOf(page, 'Cost of plugs').locator('.difference')).toContainText('same');
    await lists.nth(1).selectOption('reusable plug');
    await labelOf(page, 'Plug in use').click();
    await expect(rowOf(page, 'Plug in use').locator('.asked-panel')).toContainText('reusable plug');
  });
}

test('a value that is none of the choices is shown, with what would fix it', async ({ page }) => {
  await openApp(page);
  await chooseFile(page, csvFile('plugs.csv', plugs.replace(',,1,,1 one', ',,7,,1 one')));
  const row = rowOf(page, 'Plug in use');
  await expect(row.getByRole('combobox').first()).toHaveValue('7');
  await expect(row).toContainText('value that is no choice: 7. Take one of 1 one-use plug; 2 reusable plug.');
  await row.getByRole('combobox').first().selectOption('one-use plug');
  await expect(row).not.toContainText('value that is no choice');
});

test('breakeven compares choices by their words, and searches nothing between them', async ({ page }) => {
  await openApp(page);
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'Breakeven' }).click();
  const screen = page.getByRole('region', { name: 'Breakeven', exact: true });
  await screen.getByLabel('as this input moves').selectOption('Plug in use');
  await expect(screen.locator('.finding')).toHaveText('Nursery first pays with one-use plug and with reusable plug.');
  const table = screen.getByRole('region', { name: 'The result with each choice' });
  await expect(table.getByRole('row')).toHaveText([
    /^Plug in use/,
    /one-use plug\s*today.*\+3,840/,
    /reusable plug.*\+4,223/,
  ]);
  await expect(screen.locator('canvas')).toHaveCount(0);
  await expect(screen.getByLabel('looked at from')).toHaveCount(0);
});
