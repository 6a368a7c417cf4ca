import { chooseFile, csvFile, openApp } from './page';
import { expect, test } from './quietPage';

const [label, group, plan] = ['מחיר (ליום)? 3.5', 'مال!', 'תוכנית (ב)'];
const note = 'הערה: 3 (ליום)!';

const model = [
  'name,label,unit,formula,low,high,group,role,plan: Today,' + `plan: ${plan},note`,
  ',Which plan? A made-up farm,,,,,,,,,',
  `price,${label},EUR/plant,0.5,0.4,0.6,${group},,,,${note}`,
  `heads,Heads,plant/year,,,,${group},,100000,120000,`,
  `margin,רווח!,EUR/year,heads * price,,,${group},headline,,,`,
  '',
].join('\n');

test('labels written from right to left stand apart from the text around them', async ({ page }) => {
  await openApp(page);
  await chooseFile(page, csvFile('right-to-left.csv', model));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Which plan?');
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'What matters' }).click();
  await expect(page.getByRole('region', { name: 'What matters' }).locator('.finding').first()).toContainText(label);
  const apart = [
    page.locator('.entry-label').getByRole('button', { name: label }).locator('bdi'),
    page.locator('.headline-label').getByRole('button', { name: 'רווח!' }),
    page.locator('.plan-head').getByText(plan),
    page.getByRole('heading', { name: group, level: 3 }).locator('bdi'),
    page.locator('.finding b', { hasText: label }),
  ];
  for (const text of apart) {
    await expect(text.first()).toBeVisible();
    const bidi = await text.first().evaluate((element) => getComputedStyle(element).unicodeBidi);
    expect(bidi).toMatch(/isolate|plaintext/);
  }
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'Plans', exact: true }).click();
  const rowHead = page.locator('.plans th[scope=row]', { hasText: 'רווח!' }).first();
  await expect(rowHead).toHaveCSS('unicode-bidi', 'plaintext');
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: 'What matters' }).click();
  await page.getByRole('button', { name: label }).first().click();
  await expect(page.locator('.asked-words p', { hasText: note })).toHaveAttribute('dir', 'auto');
  // The number and its unit behind the name keep to its right, as in any English sentence.
  const finding = page.locator('.finding').first();
  const [name, next] = await finding.evaluate((element) => {
    const named = [...element.querySelectorAll('b')].find((part) => /[\u0590-\u05ff]/.test(part.textContent))!;
    const after = named.nextElementSibling ?? named.parentElement!.nextElementSibling!;
    return [named.getBoundingClientRect(), after.getBoundingClientRect()].map(({ left, top }) => ({ left, top }));
  });
  if (name!.top === next!.top) expect(next!.left).toBeGreaterThan(name!.left);
});
