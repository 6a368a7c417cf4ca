import { describe, expect, it } from 'vitest';
import { sampledRows, sampledTable, turnRows } from '../../../src/present/breakeven/tables';
import { linesOfView } from '../../../src/present/breakeven/view';
import { createFormat } from '../../../src/present/text/numberFormat';
import { ask, type Case } from './given';

const english = createFormat('en-GB');

function turns(text: string, given: Case = {}): string[] {
  const { matter } = ask(text, given);
  return turnRows(matter, linesOfView(matter.view), english).map(({ value, what, change }) =>
    `${value.text}: ${what}; ${change.text}`.replaceAll('\u00a0', ' '),
  );
}

const two = 'x [day]: 10 | range: 8 12\nk [1/day]: 1 | in A: 1 | in B: 3\nr: 24 - k * x + 2 * k * one\none [day]: 1';

describe('the table of crossings', () => {
  it('names the line, and says where both meet', () => {
    expect(turns(two)).toEqual([
      '2: A and B meet: B − A falls below 0; −8 (−80 %)',
      '10: B falls below 0; 0 (0 %)',
      '26: A falls below 0; +16 (160 %)',
    ]);
  });
  it('of the difference holds no more than that', () => {
    expect(turns(two, { view: 'difference' })).toEqual(['2: B − A falls below 0; −8 (−80 %)']);
  });
  it('has breaks and touches too, with as many digits as are sure', () => {
    expect(turns('x: 10 | range: 8 12\nr: (x - 17) ^ 2 / (x - 3)')).toEqual([
      '3: r changes side without meeting 0; −7 (−70 %)',
      '17: r touches 0; +7 (70 %)',
    ]);
    expect(turns('x: 1 | range: 0 2\nr: 3 * x - 1')[0]).toMatch(/^0\.333333333333: r rises to 0/);
  });
});

it('the table of the lines goes over what is drawn', () => {
  const { matter, quick } = ask(two);
  const rows = sampledRows(quick, matter.lines, ['against', 'plan', 'difference']);
  expect([rows[0]!.x, rows.at(-1)!.x]).toEqual([quick.visible.from, quick.visible.to]);
  for (const { x, ys } of rows) {
    expect(ys[0]).toBeCloseTo(26 - x, 9);
    expect(ys[2]).toBeCloseTo(ys[1]! - ys[0]!, 9);
  }
});

it('the lines are shown with the decimals that the largest result calls for, and told where there is none', () => {
  const { matter } = ask('x: 2\nr: x');
  const rows = [
    { x: 0.5, ys: [12.3456, NaN] },
    { x: 1000, ys: [-0.5, 0.25] },
  ];
  // Four significant digits of 12.3456 are two decimals; halves are rounded away from zero.
  const table = sampledTable(rows, matter, ['A', 'B'], english);
  expect(table.rows.map((row) => row.map(({ text }) => text))).toEqual([
    ['0.5', '12.35', 'cannot be computed'],
    ['1,000', '−0.50', '0.25'],
  ]);
});
