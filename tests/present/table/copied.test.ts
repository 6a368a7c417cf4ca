// @vitest-environment jsdom
import { expect, it } from 'vitest';
import { htmlTable, tabbedText } from '../../../src/present/table/copied';

const rows = [
  ['entry', 'result, EUR'],
  ['a\tb\nc', { number: '-12.5' }],
  ['\u00a0=1+1', 'cannot be computed'],
  ['<b> & "c"', ''],
];

it('a copied table is text with tabs between its columns, guarded against being run', () => {
  expect(tabbedText(rows)).toBe('entry\tresult, EUR\na b c\t-12.5\n\'\u00a0=1+1\tcannot be computed\n<b> & "c"\t\n');
});

it('and an HTML table with the same cells and its caption', () => {
  const page = new DOMParser().parseFromString(htmlTable('Margin <1>', rows), 'text/html');
  expect(page.querySelector('caption')?.textContent).toBe('Margin <1>');
  const cells = [...page.querySelectorAll('tr')].map((row) => [...row.children].map(({ textContent }) => textContent));
  expect(cells).toEqual([
    ['entry', 'result, EUR'],
    ['a\tb\nc', '-12.5'],
    ["'\u00a0=1+1", 'cannot be computed'],
    ['<b> & "c"', ''],
  ]);
});
