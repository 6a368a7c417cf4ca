import { describe, expect, it } from 'vitest';
import { usesOf, withCopy, withEntry, withoutEntry } from '../../../src/model/change/entries';
import { groupOfRow, withRowMoved } from '../../../src/model/change/rows';
import { field, type Sheet } from '../../../src/model/sheet';
import { sheetOf } from '../table';

const sheet = sheetOf(`
a: 1 | group: One
b: a * 2
c: 3 | group: Two | budget: cost | correlation: a 0.3; b 0.1
d: a + b - c | in P: a * c`);

function names({ rows }: Sheet): string[] {
  return rows.map((row) => field(row, 'name'));
}

describe('entries', () => {
  it('a new one stands behind another, under its heading, with a name from its label', () => {
    const entry = { label: 'Rent', unit: 'EUR/month', formula: '300', source: 'entered 3 May 2026' };
    const { sheet: after, row } = withEntry(sheet, 3, entry);
    expect(names(after)).toEqual(['a', 'b', 'rent', 'c', 'd']);
    expect(row).toBe(6);
    expect(groupOfRow(after, row)).toBe('One');
    expect(after.rows[0]).toBe(sheet.rows[0]);
  });

  it('a copy counts nothing twice', () => {
    const { sheet: after, row } = withCopy(sheet, 4, 'C again');
    const copy = after.rows.find((one) => one.row === row)!;
    expect(['name', 'label', 'formula', 'budget', 'correlation', 'group'].map((column) => field(copy, column))).toEqual(
      ['c_2', 'C again', '3', '', '', 'Two'],
    );
  });

  it('moves within its heading', () => {
    expect(names(withRowMoved(sheet, 3, -1))).toEqual(['b', 'a', 'c', 'd']);
    expect(groupOfRow(withRowMoved(sheet, 3, -1), 3)).toBe('One');
    expect(withRowMoved(sheet, 3, 1)).toBe(sheet);
    expect(withRowMoved(sheet, 2, -1)).toBe(sheet);
  });

  it('what names one is listed, with the text that is left where it is a plain term', () => {
    expect(usesOf(sheet, 'a')).toEqual([
      { row: 3, column: 'formula', without: undefined },
      { row: 4, column: 'correlation', without: 'b 0.1' },
      { row: 5, column: 'formula', without: 'b - c' },
      { row: 5, column: 'plan: P', without: undefined },
    ]);
    expect(usesOf(sheet, 'c').map(({ without }) => without)).toEqual(['a + b', undefined]);
  });

  it('a text that tells of one uses it, and keeps the figure', () => {
    const told = sheetOf('- Of {a; unit} a | note: a is {b + a}\na: 1\nb: 2');
    expect(usesOf(told, 'a')).toEqual([
      { row: 2, column: 'label', without: undefined },
      { row: 2, column: 'note', without: undefined },
    ]);
    expect(withoutEntry(told, 3).rows[0]).toBe(told.rows[0]);
  });

  it('one that is gone leaves the sums it was a term of, and its heading to those behind it', () => {
    const after = withoutEntry(sheet, 2);
    expect(names(after)).toEqual(['b', 'c', 'd']);
    expect(after.rows.map((row) => field(row, 'formula'))).toEqual(['a * 2', '3', 'b - c']);
    expect(groupOfRow(after, 3)).toBe('One');
  });

  it.each([
    ['a', 'b + c'],
    ['a ? b : c', undefined],
    ['(b + c) * 2', undefined],
    ['b * c + a', undefined],
    ['-b + c', 'c'],
    ['c + b + b', undefined],
  ])('the name b in %s', (formula, left) => {
    const given = sheetOf(`a: 1\nb: 2\nc: 3\nd: ${formula === 'a' ? 'b + c + b_2' : formula}\nb_2: 1`);
    const expected = formula === 'a' ? 'c + b_2' : left;
    expect(usesOf(given, 'b')[0]?.without).toBe(expected);
  });
});
