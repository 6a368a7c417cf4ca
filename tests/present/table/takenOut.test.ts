import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { parseRecords } from '../../../src/files/csv';
import { exportTable, guardedText, type TableEntry } from '../../../src/files/exportTable';
import { figure, words, type DataCell, type DataTable } from '../../../src/present/table/dataTable';
import { allDigits, takenRows } from '../../../src/present/table/takenOut';
import { createFormat } from '../../../src/present/text/numberFormat';

const english = createFormat('en-GB');
const third = decimal(1).dividedBy(3);

const table: DataTable = {
  caption: 'Margin',
  columns: [{ name: 'entry' }, { name: 'low' }, { name: 'result', unit: 'EUR/year' }, { name: 'code', aside: true }],
  rows: [
    [words('Price', 'today'), figure('0.33\u00a0EUR', third, 'EUR'), figure('1,234', decimal('1234.4')), words('a')],
    [words('Move'), figure('12\u00a0s', 12, 's'), figure('unknown', NaN), words('–')],
  ],
  foot: [[words('all'), words(''), figure('−5', decimal('-5.125')), words('')]],
};

describe('a table that is taken out', () => {
  it('is rounded as shown, with points for decimals, no thousands marks, and units in heads and columns', () => {
    expect(takenRows(table, 'shown', english)).toEqual([
      ['entry', 'low', 'unit of low', 'result, EUR/year', 'code'],
      ['Price, today', { number: '0.33' }, 'EUR', { number: '1234' }, 'a'],
      ['Move', { number: '12' }, 's', 'cannot be computed', ''],
      ['all', '', '', { number: '-5' }, ''],
    ]);
  });

  it('has all digits where they are asked for, and nothing where there is no number', () => {
    expect(takenRows(table, 'all', english).slice(1)).toEqual([
      ['Price, today', { number: '0.3333333333333333333333333333333333' }, 'EUR', { number: '1234.4' }, 'a'],
      ['Move', { number: '12' }, 's', '', ''],
      ['all', '', '', { number: '-5.125' }, ''],
    ]);
  });

  it('says more than a number where the screen does, and the number alone where it is known', () => {
    const row = (cell: DataCell) =>
      takenRows({ caption: '', columns: [{ name: 'a' }], rows: [[cell]] }, 'shown', english)[1];
    expect(row(figure('cannot flip it', undefined))).toEqual(['cannot flip it']);
    expect(row(figure('just above 16', 16))).toEqual(['just above 16']);
    expect(row({ ...figure('16 (2 more)', 16), alone: '16' })).toEqual([{ number: '16' }]);
  });

  it.each([
    [0.1, '0.1'],
    [1 / 3, '0.3333333333333333'],
    [5e-324, '5e-324'],
    [1.7976931348623157e308, '1.7976931348623157e+308'],
    [-0, '0'],
  ])('float64 %d has its own digits', (float, digits) => expect(allDigits(float)).toBe(digits));
});

describe('as CSV', () => {
  const text = fc.string({ unit: fc.constantFrom(...Array.from('=+-@ \u00a0\u200b\t\r\n",;\'aß1.٣א')), maxLength: 8 });
  const number = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.constant(NaN), fc.integer());
  const cell = fc.oneof(
    text.map((each) => words(each)),
    number.map((each) => figure(Number.isNaN(each) ? '–' : english.full(decimal(each)), each)),
  );
  const tables = fc.integer({ min: 2, max: 4 }).chain((width) =>
    fc.record({
      caption: text,
      columns: fc.array(fc.record({ name: text }), { minLength: width, maxLength: width }),
      rows: fc.array(fc.array(cell, { minLength: width, maxLength: width }), { maxLength: 5 }),
    }),
  );
  const shown = (entry: TableEntry): string => (typeof entry === 'string' ? guardedText(entry) : entry.number);

  it('any table is read back cell by cell', () => {
    fc.assert(
      fc.property(tables, fc.constantFrom('shown' as const, 'all' as const), (made, digits) => {
        const rows = takenRows(made, digits, english);
        const back = parseRecords(exportTable(rows), ',')
          .filter(({ row }) => row > 0)
          .map(({ fields, problem }) => [...fields, ...(problem === undefined ? [] : ['!'])]);
        // A line of blank cells is a record too, as it holds commas.
        expect(back).toEqual(rows.map((row) => row.map(shown)));
      }),
      { numRuns: 300 },
    );
  });
});
