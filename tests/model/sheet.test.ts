import { describe, expect, it } from 'vitest';
import { field, planOfColumn, withField, withRow } from '../../src/model/sheet';
import { sheetOf } from './table';

describe('a column', () => {
  it.each([
    ['plan: Nursery first', 'Nursery first'],
    ['plan:A', 'A'],
    ['plan:  A ', 'A'],
    ['plan:', ''],
    ['plan: a: b', 'a: b'],
    ['plan', undefined],
    ['plans: A', undefined],
    ['Plan: A', undefined],
    ['formula', undefined],
  ])('%j holds the formulas of plan %j', (column, plan) => {
    expect(planOfColumn(column)).toBe(plan);
  });
});

describe('a field', () => {
  const row = {
    row: 2,
    fields: new Map([
      ['name', ' a '],
      ['unit', '  '],
    ]),
  };

  it.each([
    ['name', 'a'],
    ['unit', ''],
    ['formula', ''],
  ])('%s is read without spaces around it, and blank where there is none', (column, text) => {
    expect(field(row, column)).toBe(text);
  });

  it('is changed in a copy', () => {
    const changed = withField(row, 'name', 'b');
    expect([field(row, 'name'), field(changed, 'name'), changed.row]).toEqual(['a', 'b', 2]);
  });
});

describe('a record', () => {
  it('is replaced by its number, and the others stay the same objects', () => {
    const before = sheetOf('a: 1\nb: 2\nc: 3');
    const after = withRow(before, withField(before.rows[1]!, 'formula', '5'));
    expect(after.rows.map((row) => field(row, 'formula'))).toEqual(['1', '5', '3']);
    expect([after.rows[0] === before.rows[0], after.rows[2] === before.rows[2]]).toEqual([true, true]);
  });
});
