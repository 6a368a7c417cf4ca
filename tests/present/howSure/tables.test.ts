import { describe, expect, it } from 'vitest';
import { createFormat } from '../../../src/present/text/numberFormat';
import { spreadOf } from '../../../src/present/howSure/summary';
import { binRows, figureRows, type TableLine } from '../../../src/present/howSure/tables';

const english = createFormat('en-GB');
const told = ({ what, numbers }: TableLine): string[] => [what, ...numbers.map(({ text }) => text)];
const even = Float64Array.from({ length: 1001 }, (_, i) => i / 10);

describe('the tables of draws', () => {
  it('have the figures, a column for each set', () => {
    const rows = figureRows(
      spreadOf(
        even,
        even.map((x) => x + 1),
        50,
      )!,
      '50',
      english,
    );
    expect(told(rows[0]!)).toEqual(['draws that could be computed', '1,001', '1,001']);
    expect(told(rows.find(({ what }) => what === 'mean')!)).toEqual(['mean', '50.00', '51.00']);
    expect(told(rows.find(({ what }) => what === '5 % are below')!)).toEqual(['5 % are below', '5.00', '6.00']);
    // 500 and 510 of 1,001 lie above 50.
    expect(told(rows.at(-1)!)).toEqual(['above 50, per cent', '50.0', '50.9']);
  });
  it('have the bins, whose shares come to nearly all', () => {
    const rows = binRows(spreadOf(even, undefined, 0)!, english);
    expect(rows[0]!.what).toBe('0 – 2');
    expect(rows.reduce((sum, { numbers }) => sum + Number(numbers[0]!.text), 0)).toBeGreaterThan(98);
  });
  it('say what one draw leaves unknown', () => {
    const rows = figureRows(spreadOf(Float64Array.of(4), undefined, 0)!, '0', english);
    expect(told(rows.find(({ what }) => what === 'standard deviation')!)).toEqual(['standard deviation', 'unknown']);
  });
});
