import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { tasks } from '../../src/trade/calendarEvents';
import { run } from './running';

const text = '9 boards every 4 d: 4 d at 10, keeps 0.75; 6.5 d at 5, keeps 0.9';
const found = run(text, { days: 16, batch: decimal(20) });

describe('events', () => {
  it('say what is done with each batch, in order of time; boards are emptied before they are filled', () => {
    const lines = found.events.map(
      ({ at, task, batch, from = -1, to = -1, plants, boards }) =>
        `${at} ${task} ${batch}: ${plants} on ${boards}, ${from + 1} to ${to + 1}`,
    );
    expect(lines).toEqual([
      '0 sow 1: 20 on 2, 0 to 1',
      '4 wash 1: 0 on 2, 1 to 0',
      '4 move 1: 15 on 3, 1 to 2',
      '4 sow 2: 20 on 2, 0 to 1',
      '8 wash 2: 0 on 2, 1 to 0',
      '8 move 2: 15 on 3, 1 to 2',
      '8 sow 3: 20 on 2, 0 to 1',
      '10.5 harvest 1: 14 on 3, 2 to 0',
      '10.5 wash 1: 0 on 3, 2 to 0',
      '12 wash 3: 0 on 2, 1 to 0',
      '12 move 3: 15 on 3, 1 to 2',
      '12 sow 4: 20 on 2, 0 to 1',
      '14.5 harvest 2: 14 on 3, 2 to 0',
      '14.5 wash 2: 0 on 3, 2 to 0',
    ]);
  });

  it('fall on the day in which their instant lies', () => {
    expect(found.events.every(({ at, day }) => day <= at && at < day + 1)).toBe(true);
    // 10 × 0.7 days are 7 days, though 0.7 has no exact double.
    const tenths = run('9 boards every 0.7 d: 0.7 d at 5', { days: 8, batch: decimal(5) });
    expect(tenths.events.filter(({ at }) => at === 7).map(({ day, task }) => `${day} ${task}`)).toEqual([
      '7 harvest',
      '7 wash',
      '7 sow',
    ]);
  });

  it('move on the plants of the stage before: what enters a stage left the other', () => {
    const year = run(text, { days: 365, batch: decimal(20) });
    const count = (task: string) => year.events.filter((event) => event.task === task).length;
    expect(tasks.map(count)).toEqual([89, 180, 91, 92]);
    const batches = year.batches.flatMap(({ stays, harvested }) => [
      ...stays.filter(({ to }) => to < 365).map(() => 'wash'),
      ...(harvested === undefined ? [] : ['harvest']),
    ]);
    expect(batches.length).toBe(count('wash') + count('harvest'));
  });
});
