import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Sheet } from '../../../../../src/model/sheet';
import { acrossStep, isSheetStep, stepBetween, weightOf } from '../../../../../src/ui/app/shelf/steps/sheetStep';
import { sheetSum } from '../../../../../src/ui/app/shelf/steps/sheetSum';

const columns = ['name', 'label', 'formula', 'plan: A', ''];
const someColumns = fc.uniqueArray(fc.constantFrom(...columns), { maxLength: 5 });
const someRow = fc.record({
  row: fc.integer({ min: 2, max: 9 }),
  fields: fc.dictionary(fc.constantFrom(...columns), fc.constantFrom('', 'a', 'b', '水')),
});
const someSheet: fc.Arbitrary<Sheet> = fc
  .record({ columns: someColumns, rows: fc.uniqueArray(someRow, { selector: ({ row }) => row, maxLength: 8 }) })
  .map(({ columns: names, rows }) => ({
    columns: names,
    rows: rows.map(({ row, fields }) => ({ row, fields: new Map(Object.entries(fields)) })),
  }));

const plain = ({ columns: names, rows }: Sheet) => ({
  columns: names,
  rows: rows.map(({ row, fields }) => [row, Object.fromEntries(fields)]),
});

describe('a step between two sheets', () => {
  it('leads from each to the other, also as the database gives it back, and their sums tell them apart', () => {
    fc.assert(
      fc.property(someSheet, someSheet, (before, after) => {
        const step: unknown = structuredClone(stepBetween(before, after));
        if (!isSheetStep(step)) throw new Error('not read again');
        expect(plain(acrossStep(before, step, false)!)).toEqual(plain(after));
        expect(plain(acrossStep(after, step, true)!)).toEqual(plain(before));
        const isSame = JSON.stringify(plain(before)) === JSON.stringify(plain(after));
        if (isSame) expect(sheetSum(before)).toBe(sheetSum(after));
        else if (step.fields.length + Number(step.rows !== undefined) + Number(step.columns !== undefined) > 0)
          expect(sheetSum(before)).not.toBe(sheetSum(after));
      }),
    );
  });
  it('does not lead on from a sheet that it was not made from', () => {
    const sheet = (text: string, rows = [2, 3]): Sheet => ({
      columns: ['formula'],
      rows: rows.map((row) => ({ row, fields: new Map([['formula', text]]) })),
    });
    const step = stepBetween(sheet('1'), sheet('2'));
    expect(acrossStep(sheet('3'), step, false)).toBeUndefined();
    expect(acrossStep(sheet('1'), step, true)).toBeUndefined();
    const moved = stepBetween(sheet('1'), sheet('1', [3, 2]));
    expect(acrossStep(sheet('1', [2, 4]), moved, false)).toBeUndefined();
  });
  it('weighs about what it has of text', () => {
    const one = (text: string): Sheet => ({ columns: ['a'], rows: [{ row: 2, fields: new Map([['a', text]]) }] });
    expect(weightOf(stepBetween(one(''), one('x'.repeat(500))))).toBeGreaterThan(500);
    expect(weightOf(stepBetween(one(''), one('x')))).toBeLessThan(50);
  });
});

it.each([null, 7, {}, { fields: 7 }, { fields: [[1, 'a', 2, 'b']] }, { fields: [], rows: { at: 'x' } }])(
  '%j is no step',
  (value) => expect(isSheetStep(value)).toBe(false),
);
