import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { readModelText } from '../../../src/files/readModel';
import { buildModel } from '../../../src/model/buildModel';
import { inSystem } from '../../../src/model/change/measures';
import { currenciesOf, inCurrency } from '../../../src/model/change/money';
import { cellNamed, type Model } from '../../../src/model/model';
import { field, type Sheet } from '../../../src/model/sheet';
import { evaluatePlan } from '../../../src/model/values';

function hire(): Model {
  return readModelText(readFileSync('models/transplant-hire.csv', 'utf8')).model;
}

function numbers({ plans }: Model): number[][] {
  return plans.map((plan) => evaluatePlan(plan).numbers.map((value) => value.toNumber()));
}

function text(sheet: Sheet, name: string, column: string): string {
  return field(
    sheet.rows.find((row) => field(row, 'name') === name)!,
    column,
  );
}

describe('another currency', () => {
  it('keeps every figure and renames every unit', () => {
    const before = hire();
    const sheet = inCurrency(before.sheet, 'EUR', 'USD');
    const after = buildModel(sheet);
    expect(currenciesOf(sheet)).toEqual(['USD']);
    expect(after.faults).toEqual(before.faults);
    expect(numbers(after)).toEqual(numbers(before));
  });

  it('with a rate multiplies prices, their ranges and steps, and no count of plants', () => {
    const before = hire();
    const sheet = inCurrency(before.sheet, 'EUR', 'USD', decimal(2));
    expect(['formula', 'low', 'high', 'step'].map((column) => text(sheet, 'wage', column))).toEqual([
      '29',
      '26',
      '34',
      '0.1',
    ]);
    const after = buildModel(sheet);
    const [margin, week] = ['margin', 'finished_week'].map((name) => cellNamed(before, name)!.id) as [number, number];
    numbers(after).forEach((values, plan) => {
      expect(values[margin]).toBeCloseTo(numbers(before)[plan]![margin]! * 2, 6);
      expect(values[week]).toBe(numbers(before)[plan]![week]);
    });
  });
});

describe('another system of measures', () => {
  it('changes units and their figures by the exact factors, and no result', () => {
    const before = hire();
    const sheet = inSystem(before.sheet, 'us');
    expect(text(sheet, 'first_spread', 'unit')).toBe('in');
    expect(text(sheet, 'board_area', 'unit')).toBe('ft^2/board');
    // International foot, 0.3048 m exactly (NIST SP 811, 2008, appendix B.8).
    expect(Number(text(sheet, 'board_area', 'formula'))).toBeCloseTo(0.7432 / 0.3048 ** 2, 12);
    const after = buildModel(sheet);
    expect(after.faults).toEqual(before.faults);
    const margin = cellNamed(before, 'margin')!.id;
    numbers(after).forEach((values, plan) => expect(values[margin]).toBeCloseTo(numbers(before)[plan]![margin]!, 6));
  });

  it('and back gives the figures within the last digit', () => {
    const sheet = inSystem(inSystem(hire().sheet, 'us'), 'metric');
    expect(text(sheet, 'first_spread', 'unit')).toBe('cm');
    expect(Number(text(sheet, 'board_area', 'formula'))).toBeCloseTo(0.7432, 15);
  });
});
