import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { exportTable } from '../../../../src/files/exportTable';
import { allHours, workDays, workTable } from '../../../../src/present/beds/work/workRows';
import { takenRows } from '../../../../src/present/table/takenOut';
import { createDates } from '../../../../src/present/text/dates';
import type { WorkStep } from '../../../../src/trade/labour';
import { workList, type WorkTask } from '../../../../src/trade/workList';
import { newYear, run } from '../../../trade/running';
import { english, names } from '../given';

const steps: WorkStep[] = [
  { task: 'sow', seconds: 36, per: 'plant' },
  { task: 'move', seconds: 18, per: 'plant' },
  { task: 'harvest', seconds: 72, per: 'plant' },
  { task: 'wash', seconds: 900, per: 'board' },
];
// Batches every second day: 20 on 2 boards, 15 moved to 3 after 4 days, 14 kept after 3.5 more.
const found = run('30 boards every 2 d: 4 d at 10, keeps 0.75; 3.5 d at 5, keeps 0.9', { batch: decimal(20) });
const list = workList(found, steps, newYear + 20, 4);
const dates = createDates('en-GB');

function csv(tasks: readonly WorkTask[], called = names): string[] {
  const table = workTable(workDays(tasks, called, english, dates), allHours(tasks, english), called);
  return exportTable(takenRows(table, 'shown', english)).split('\r\n');
}

describe('a week’s work as a table', () => {
  it('is taken out with dates, the parts of each task, stages by name, and all hours below', () => {
    expect(csv(list.slice(0, 4))).toEqual([
      'day,what,date,task,from,to,plants,boards,hours',
      'Tue 21 Jan,Wash nursery boards,2031-01-21,wash,nursery,,,2,0.50',
      'Tue 21 Jan,Move from nursery to finishing boards,2031-01-21,move,nursery,finishing,15,3,0.08',
      'Tue 21 Jan,Sow on nursery boards,2031-01-21,sow,,nursery,20,2,0.20',
      'Wed 22 Jan,Harvest off finishing boards,2031-01-22,harvest,finishing,,14,3,0.28',
      'all hours,,,,,,,,1.06',
      '',
    ]);
  });

  it('a stage’s name cannot run as a formula in another program', () => {
    expect(csv(list.slice(1, 2), { ...names, stages: ['=1+1', 'wide'] }).join()).toContain(`,"'=1+1",`);
  });
});
