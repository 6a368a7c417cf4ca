import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { buildModel } from '../../../src/model/buildModel';
import { fittedRange, keptWidth, outsideRange, rangeAround, withRangesFitted } from '../../../src/model/change/ranges';
import { cellNamed, type Model } from '../../../src/model/model';
import { modelOf } from '../table';

function cellOf(text: string): NonNullable<ReturnType<typeof cellNamed>> {
  return cellNamed(modelOf(text), 'x')!;
}

describe('a range that follows its number', () => {
  it.each([
    ['keeps its width in per cent of its middle', 'x: 10 | range: 8 12', 20, '16', '24'],
    ['rounds its ends to what a person would write', 'x: 14.5 | range: 13 17', 21.37, '18.5', '24.2'],
    ['lies to both sides of a number as it lay to both sides of its middle', 'x: 3 | range: 1 3', 8, '4', '12'],
    ['a narrow one keeps its digits', 'x: 10 | range: 9.999 10.001', 21.37, '21.3679', '21.3721'],
    ['a share stays within 100 %', 'x [%]: 95 | range: 93 97', 99, '96.9', '100'],
    ['a share beyond 100 % is one no longer', 'x [%]: 30 | range: 24 36', 150, '120', '180'],
    ['a share below 0 is one no longer', 'x [%]: 3 | range: 0 5', -1, '-3.5', '1.5'],
    ['around 0 it does not reach below 0 where it did not before', 'x: 1 | range: 0 3', 0, '0', '1.5'],
    ['around 0 it keeps its width in its unit', 'x: 1 | range: -1 2', 0, '-1.5', '1.5'],
    ['of another sign it keeps its width in its unit', 'x: 10 | range: 8 12', -4, '-6', '-2'],
    ['around 0 with a middle of 0', 'x: 0 | range: -2 2', 10, '8', '12'],
  ])('%s', (_claim, text, value, low, high) => {
    expect(fittedRange(cellOf(text), decimal(value))).toEqual({ low, high });
  });

  it('is none where there was none', () => expect(fittedRange(cellOf('x: 1'), decimal(2))).toBeUndefined());

  it.each([
    ['in per cent', 'x: 10 | range: 8 12', 20, { percent: 20 }],
    ['in its unit', 'x: 0 | range: -1 1', 5, { percent: undefined }],
    ['no longer, at the end of a share', 'x [%]: 95 | range: 93 97', 99, undefined],
    ['no longer, at 0', 'x: 1 | range: 0 3', 0, undefined],
  ])('is as wide as before %s', (_claim, text, value, width) => {
    const cell = cellOf(text);
    expect(keptWidth(cell, decimal(value), fittedRange(cell, decimal(value))!)).toEqual(width);
  });

  it('is moved for all entries whose number stands outside, and leaves no fault', () => {
    const model: Model = modelOf('x: 20 | range: 8 12\ny: 1 | range: 0 2\nz: 5 | range: 6 8');
    expect(outsideRange(model).map(({ name }) => name)).toEqual(['x', 'z']);
    const sheet = withRangesFitted(model, outsideRange(model));
    expect(buildModel(sheet).faults).toEqual([]);
    expect(sheet.rows[1]).toBe(model.sheet.rows[1]);
  });
});

describe('a range around a number', () => {
  it.each([
    [10, 20, '', '8', '12'],
    [14.5, 15, 'EUR/h', '12.3', '16.7'],
    [95, 10, '%', '85.5', '100'],
    [0, 20, '', '0', '0'],
  ])('%d, so many per cent to each side: %d, %s', (value, percent, unit, low, high) => {
    expect(rangeAround(decimal(value), percent, unit)).toEqual({ low, high });
  });
});
