import { takenRows } from '../../../src/present/table/takenOut';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { exportTable } from '../../../src/files/exportTable';
import { lever } from '../../../src/model/view';
import { surfaceOf, type Grid } from '../../../src/study/grid';
import { createFormat } from '../../../src/present/text/numberFormat';
import { exactRows, heatDataTable, heatTable } from '../../../src/present/heat/table';
import { asked, idOf, modelOf } from '../../model/table';

const model = modelOf(`
  x [EUR/h]: 10 | label: Wage
  y [h]: 3 | label: Hours
  r [EUR]: base / 3 - x * y * one / (y - 2 * one) | label: Left
  base [EUR]: 100
  one [h]: 1
`);
const question = asked(model, 'r');
const [x, y] = ['x', 'y'].map((name) => lever(question.view, idOf(model, name))!);
const cellOf = (name: string) => model.cells[idOf(model, name)]!;
const along = { across: { cell: cellOf('x'), today: x!.base }, down: { cell: cellOf('y'), today: y!.base } };
const numbers = (...texts: string[]) => texts.map(decimal);

const english = createFormat('en-GB');

function exact(): Grid<ReturnType<typeof decimal>> {
  const found = [...exactRows(surfaceOf(question, x!, y!), numbers('10', '20'), numbers('2', '3'))];
  return found.at(-1)!;
}

describe('the table of two inputs', () => {
  it('grows row by row from the top', () => {
    const rows = [...exactRows(surfaceOf(question, x!, y!), numbers('10', '20'), numbers('2', '3'))];
    expect(rows.flatMap((grid) => (grid === undefined ? [] : grid.values.length))).toEqual([1, 2]);
  });

  it('has the highest number of the second input on top, today’s marked, and the worse side signed', () => {
    const table = heatTable(exact(), along, cellOf('r'), (value) => value.lt(0), createFormat('en-GB'));
    expect(table.across).toEqual([
      { text: '10', today: true },
      { text: '20', today: false },
    ]);
    expect(
      table.rows.map(({ head, cells }) => [
        head.text,
        head.today,
        ...cells.map(({ text, worse }) => `${text ?? '–'} ${worse}`),
      ]),
    ).toEqual([
      ['3', true, '3.33 false', '−26.67 true'],
      ['2', false, '– false', '– false'],
    ]);
  });

  it('as CSV has all digits, and nothing where it cannot be computed', () => {
    const shown = heatTable(exact(), along, cellOf('r'), (value) => value.lt(0), english);
    const table = heatDataTable(shown, exact(), along, 'Left, EUR');
    expect(exportTable(takenRows(table, 'all', english))).toBe(
      '"Hours, h down, Wage, EUR/h across",10,20\r\n' +
        '3,3.33333333333333333333333333333333,-26.66666666666666666666666666666667\r\n2,,\r\n',
    );
  });
});
