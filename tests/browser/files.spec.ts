import { readFileSync } from 'node:fs';
import { chooseFile, csvFile, dropFile, fieldOf, headlineOf, labelOf, openApp, rowOf, savedFile } from './page';
import { expect, test } from './quietPage';

const shipped = readFileSync(new URL('../../models/transplant-hire.csv', import.meta.url));

const small = [
  'name,label,unit,formula,low,high,group,role,note',
  ',A small farm,,,,,,,',
  'price,Price,EUR/head,0.8,0.5,1,Selling,,',
  'heads,Heads a year,head/year,1000,,,Selling,,',
  'sales,Sales,EUR/year,price * heads,,,Selling,headline,',
].join('\r\n');

test.beforeEach(({ page }) => openApp(page));

test('what was opened and not changed is saved byte for byte', async ({ page }) => {
  const saved = await savedFile(page);
  expect(saved.name).toBe('transplant-hire.csv');
  expect(saved.bytes.equals(shipped)).toBe(true);
  const marked = `\ufeff${small}\r\n\r\n`;
  await chooseFile(page, csvFile('small.csv', marked));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('A small farm');
  expect((await savedFile(page)).bytes.toString()).toBe(marked);
});

test('a changed number changes its own field in the file and nothing else', async ({ page }) => {
  await chooseFile(page, csvFile('small.csv', small));
  await fieldOf(page, 'Price').fill('0.9');
  await expect(headlineOf(page, 'Sales')).toContainText('900');
  expect((await savedFile(page)).bytes.toString()).toBe(small.replace('0.8', '0.9'));
});

test('a file that is dropped anywhere is opened, and undo brings the model before back', async ({ page }) => {
  const title = await page.getByRole('heading', { level: 1 }).textContent();
  await dropFile(page, csvFile('small.csv', small));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('A small farm');
  await page.getByRole('button', { name: 'Undo it' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title ?? '');
});

const wrongFiles: [what: string, bytes: Buffer, says: RegExp][] = [
  ['an empty file', Buffer.from(''), /empty file: 0 bytes/],
  ['a picture', Buffer.from('89504e470d0a1a0a0000000d', 'hex'), /not a text file: a PNG picture/],
  ['a file in Latin-1', Buffer.from('name,formula\nm\u00fcller,1\n', 'latin1'), /not in UTF-8: m\u00fcller/],
  ['a table of something else', Buffer.from('date,amount\n1,2\n'), /missing columns: name, formula/],
  [
    'a file of timed trials',
    Buffer.from('step,plants,seconds\nmoving,60,700\n'),
    /a trials file.*“Open trials” under Timing/,
  ],
];

for (const [what, bytes, says] of wrongFiles) {
  test(`${what} is refused with the reason, and the model open before stays`, async ({ page }) => {
    await chooseFile(page, csvFile('small.csv', small));
    await fieldOf(page, 'Price').fill('0.9');
    await dropFile(page, { name: 'wrong.csv', mimeType: 'text/csv', buffer: bytes });
    await expect(page.getByRole('heading', { name: 'wrong.csv was not opened' })).toBeVisible();
    await expect(page.getByRole('alert')).toContainText(says);
    await expect(fieldOf(page, 'Price')).toHaveValue('0.9');
    await page.getByRole('button', { name: 'Close' }).click();
    await expect(page.getByRole('heading', { name: 'wrong.csv was not opened' })).toHaveCount(0);
  });
}

test('labels, notes and formulas that look like code are shown as text', async ({ page }) => {
  const code = '<img src=x onerror=alert(1)>';
  await chooseFile(
    page,
    csvFile(
      'code.csv',
      [
        'name,label,formula,note,group',
        `,<b>Bold</b> title,,${code},`,
        `a,${code},1,<script>alert(2)</script>,<i>Group</i>`,
        `b,Two,"import({matrix:cos.constructor},{override:1})",,`,
        `__proto__,Proto,3,,`,
        `constructor,Constructor,4,,`,
      ].join('\n'),
    ),
  );
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('<b>Bold</b> title');
  await expect(page.getByRole('heading', { level: 3, name: '<i>Group</i>' })).toBeVisible();
  await page.getByRole('button', { name: code }).click();
  await expect(page.getByText('<script>alert(2)</script>')).toBeVisible();
  await expect(rowOf(page, 'Two')).toContainText('not allowed in a formula');
  await expect(page.locator('.refused')).toContainText('name not allowed: __proto__');
  await expect(fieldOf(page, 'Constructor')).toHaveValue('4');
  expect(await page.evaluate(() => Object.keys(Object.prototype))).toEqual([]);
});

test('faults stand at their entries and in one list; what does not depend on them still computes', async ({ page }) => {
  await chooseFile(
    page,
    csvFile(
      'faulty.csv',
      [
        'name,label,unit,formula,low,high,role',
        'wage,Wage,EUR/h,15,,,',
        'hours,Hours,h,3,,,',
        'pay,Pay,EUR,wage * hors,,,headline',
        'twice,Twice,EUR,2 * pay,,,',
        'sum,Sum,EUR,wage + hours,,,',
        'nought,Nought,,1 / (back - back),,,',
        'good,Good,EUR,wage * hours,,,',
        'back,Back,,4,9,2,',
        'wage,Again,,5,,,',
        'one,One,,two + 1,,,',
        'two,Two,,one + 1,,,',
      ].join('\n'),
    ),
  );
  await expect(rowOf(page, 'Pay')).toContainText(': hors. Did you mean hours?');
  await expect(rowOf(page, 'Twice').getByRole('button', { name: 'Pay', exact: true })).toBeVisible();
  await expect(rowOf(page, 'Sum')).toContainText('do not go together: wage + hours');
  await expect(rowOf(page, 'Nought')).toContainText(/division by (0|zero)/);
  await expect(rowOf(page, 'Good')).toContainText('45');
  await expect(rowOf(page, 'Back')).toContainText('low above high: 9 > 2');
  await expect(page.locator('.refused')).toContainText('name used twice: wage');
  await expect(rowOf(page, 'One')).toContainText('one → two → one');
  await page.getByText(/^\d+ faults$/).click();
  await page.getByRole('button', { name: 'Go to Sum' }).click();
  await expect(labelOf(page, 'Sum')).toBeFocused();
});

test('a ; file with decimal commas opens with a notice', async ({ page }) => {
  await chooseFile(page, csvFile('semicolon.csv', 'name;label;formula\nprice;Price;0,8\n'));
  await expect(fieldOf(page, 'Price')).toHaveValue('0.8');
  await page.getByText('one notice').click();
  await expect(page.getByText('decimal commas read as decimal points')).toBeVisible();
});

test('a table without entries invites', async ({ page }) => {
  await chooseFile(page, csvFile('blank.csv', 'name,label,formula\n'));
  await expect(page.getByRole('heading', { name: 'No entries yet' })).toBeVisible();
});

test('starting over asks in place and can be undone', async ({ page }) => {
  const first = page.getByRole('textbox').first();
  const own = await first.inputValue();
  await first.fill('77');
  await page.getByRole('button', { name: 'Start over' }).click();
  await page.getByRole('button', { name: 'Keep mine' }).click();
  await expect(first).toHaveValue('77');
  await page.getByRole('button', { name: 'Start over' }).click();
  await page.getByRole('button', { name: 'Yes, start over' }).click();
  await expect(first).toHaveValue(own);
  await page.getByRole('button', { name: 'Undo it' }).click();
  await expect(first).toHaveValue('77');
});

test('where nothing can be kept, what would take the place of changed numbers asks first, unless they are saved', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('storage is switched off', 'SecurityError');
    };
  });
  await openApp(page);
  const first = page.getByRole('textbox').first();
  const title = page.getByRole('heading', { level: 1 });
  const before = await title.innerText();
  const openOther = async (): Promise<void> => {
    await page.getByText('Models', { exact: true }).click();
    await page.getByRole('button', { name: 'What may a plug cost?' }).click();
  };
  await first.fill('77');
  await openOther();
  await expect(page.getByText('takes the place of transplant-hire.csv, in which you have changed')).toBeVisible();
  await page.getByRole('button', { name: 'Keep mine' }).click();
  await expect(first).toHaveValue('77');
  await chooseFile(page, csvFile('own.csv', 'name,label,formula\nprice,Price,0.8\n'));
  await expect(title).toHaveText(before);
  await page.getByRole('button', { name: 'Open it' }).click();
  await expect(fieldOf(page, 'Price')).toHaveValue('0.8');
  await page.getByRole('button', { name: 'Undo it' }).click();
  await expect(first).toHaveValue('77');
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a file' }).click();
  await saved;
  await openOther();
  await expect(title).toContainText('What may a plug cost?');
});

test('a file of one’s own starts over as it was opened, also after a reload', async ({ page }) => {
  await chooseFile(page, csvFile('own.csv', 'name,label,formula\nprice,Price,0.8\n'));
  const price = fieldOf(page, 'Price');
  await price.fill('0.9');
  await expect(page.locator('.kept')).toHaveAttribute('data-state', 'kept');
  await page.reload();
  await expect(price).toHaveValue('0.9');
  await page.getByRole('button', { name: 'Start over' }).click();
  await page.getByRole('button', { name: 'Yes, start over' }).click();
  await expect(price).toHaveValue('0.8');
  await expect(page.getByText('Started over with the model’s own numbers.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo it' }).click();
  await expect(price).toHaveValue('0.9');
});

test('a file of 20,000 rows opens while the page stays awake, and its last entry can be reached', async ({ page }) => {
  const rows = Array.from({ length: 19_999 }, (_, i) => `n${i},Entry ${i},${i},Group ${Math.floor(i / 200)}`);
  await chooseFile(page, csvFile('large.csv', ['name,label,formula,group', ...rows, 'last,The last,,'].join('\n')));
  await page.getByText('one fault').click();
  await page.getByRole('button', { name: 'Go to The last' }).click();
  await expect(rowOf(page, 'The last')).toBeInViewport();
  expect(await page.locator('.entry').count()).toBeLessThan(1000);
});
