import { describe, expect, it } from 'vitest';
import { exportTable } from '../../../src/files/exportTable';
import { resultRow, resultsTable } from '../../../src/present/timing/resultTable';
import { takenRows } from '../../../src/present/table/takenOut';
import { timing, english, only, read, shipped, study } from './trials';

describe('the table of results', () => {
  it('has a line for each step with the digits of its spread', () => {
    const row = resultRow(only('10 110; 10 120; 10 130; 10 120; 10 x'), timing(), english);
    expect(row).toEqual({
      step: 'moving',
      name: 'moving',
      batches: '4',
      leftOut: 1,
      plants: '40',
      seconds: '12.0',
      from: '10.7',
      to: '13.3',
      standard: '13.8',
      needed: '8',
      lost: '',
    });
  });

  it('leaves blank what batches cannot tell', () => {
    const alone = resultRow(only('60 756'), timing(), english);
    expect([alone.from, alone.to, alone.needed]).toEqual(['', '', '']);
    const alike = resultRow(only('10 120; 10 120'), timing(), english);
    expect([alike.from, alike.to, alike.needed]).toEqual(['', '', '']);
    expect(resultRow(only('x 120'), { ...timing(), hasStandardTime: false }, english)).toMatchObject({
      seconds: '',
      standard: '',
    });
  });

  it('shows losses with two digits', () => {
    expect(study(shipped).map((found) => read(resultRow(found, timing(), english).lost))).toEqual([
      '0.25 %',
      '0.82 %',
      '1.4 %',
      '',
    ]);
  });

  it('is exported with all digits and guarded texts', () => {
    const found = study('step,plants,seconds\n+moving,3,100\n');
    const rows = found.map((each) => resultRow(each, timing(), english));
    const table = resultsTable(rows, found, timing(), english);
    const [, line] = exportTable(takenRows(table, 'all', english)).split('\r\n');
    expect(line).toBe(
      [
        '"\'+moving"',
        '1',
        '33.33333333333333333333333333333333',
        '',
        '',
        '',
        '38.33333333333333333333333333333333',
        '3',
        '',
        '0',
        '95',
        '15',
        'job',
        '5',
      ].join(','),
    );
  });
});
