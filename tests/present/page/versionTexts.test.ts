import { expect, test } from 'vitest';
import type { Sheet } from '../../../src/model/sheet';
import { whatChanged } from '../../../src/present/page/versionTexts';

const columns = ['name', 'label', 'formula'];

function sheet(rows: readonly (readonly [row: number, label: string, formula: string])[], more: string[] = []): Sheet {
  return {
    columns: [...columns, ...more],
    rows: rows.map(([row, label, formula]) => ({ row, fields: new Map(Object.entries({ label, formula })) })),
  };
}

const before = sheet([
  [2, 'Wage', '15'],
  [3, 'Price', '0.8'],
]);

test.each<[string, Sheet, string]>([
  [
    'a changed entry by its label',
    sheet([
      [2, 'Wage', '16'],
      [3, 'Price', '0.8'],
    ]),
    'Wage',
  ],
  [
    'a new one',
    sheet([
      [2, 'Wage', '15'],
      [3, 'Price', '0.8'],
      [4, 'Rent', '300'],
    ]),
    'new: Rent',
  ],
  ['one that is gone', sheet([[2, 'Wage', '15']]), 'taken away: Price'],
  [
    'a line without a label or a name as a line of text',
    sheet([
      [2, '', '15'],
      [3, 'Price', '0.8'],
    ]),
    'a line of text',
  ],
  [
    'a plan',
    sheet(
      [
        [2, 'Wage', '15'],
        [3, 'Price', '0.8'],
      ],
      ['plan: Nursery'],
    ),
    'new plan: Nursery',
  ],
  [
    'order alone',
    sheet([
      [3, 'Price', '0.8'],
      [2, 'Wage', '15'],
    ]),
    'the order of its rows or columns',
  ],
])('%s is told', (_what, after, told) => expect(whatChanged(before, after)).toBe(told));

test('an entry without a label is told by its name in words, and lines of text are counted', () => {
  const row = (number: number, fields: Record<string, string>) => ({
    row: number,
    fields: new Map(Object.entries(fields)),
  });
  const rows = (text: string) => [
    row(2, { name: 'market_limit', formula: text }),
    row(3, { note: text }),
    row(4, { note: text }),
  ];
  expect(whatChanged({ columns, rows: rows('1') }, { columns, rows: rows('2') })).toBe('market limit, 2 lines of text');
});

test('words of the case and timed batches are told as well', () => {
  const words = (text: string, trials: string) => ({ 'setting case words A farm': text, 'setting trials': trials });
  expect(whatChanged(before, before, words('a', 'x'), words('b', 'x'))).toBe('the words of the case');
  expect(whatChanged(before, before, {}, words('', 'x'))).toBe('the timed batches');
});

test('of many entries six are named', () => {
  const many = (text: string): Sheet =>
    sheet(Array.from({ length: 9 }, (_, i) => [i + 2, `Entry ${i}`, text] as const));
  expect(whatChanged(many('1'), many('2'))).toBe('Entry 0, Entry 1, Entry 2, Entry 3, Entry 4, Entry 5 and 3 more');
});
