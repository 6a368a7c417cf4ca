import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { taskInWords, workEvents } from '../../../../src/present/beds/work/workFiles';
import { isoDate } from '../../../../src/trade/civilDate';
import type { WorkStep } from '../../../../src/trade/labour';
import { workList } from '../../../../src/trade/workList';
import { newYear, run } from '../../../trade/running';
import { names } from '../given';

const steps: WorkStep[] = [
  { task: 'sow', seconds: 36, per: 'plant' },
  { task: 'move', seconds: 18, per: 'plant' },
  { task: 'harvest', seconds: 72, per: 'plant' },
  { task: 'wash', seconds: 900, per: 'board' },
];
// Batches every second day: 20 on 2 boards, 15 moved to 3 after 4 days, 14 kept after 3.5 more.
const found = run('30 boards every 2 d: 4 d at 10, keeps 0.75; 3.5 d at 5, keeps 0.9', { batch: decimal(20) });
const list = workList(found, steps, newYear + 20, 4);

describe('a task in words', () => {
  it('says what is moved from where to where', () => {
    expect(list.slice(0, 5).map((task) => taskInWords(task, names))).toEqual([
      'Wash 2 nursery boards',
      'Move 15 plants from nursery boards onto 3 finishing boards',
      'Sow 20 plants on 2 nursery boards',
      'Harvest 14 plants off 3 finishing boards',
      'Wash 3 finishing boards',
    ]);
  });

  it('says one of a thing as one', () => {
    const single = run('9 boards every 9 d: 2 d at 1', { batch: decimal(1), days: 9 });
    expect(workList(single, [], newYear, 9).map((task) => taskInWords(task, names))).toEqual([
      'Sow 1 plant on 1 nursery board',
      'Harvest 1 plant off 1 nursery board',
      'Wash 1 nursery board',
    ]);
  });
});

describe('as events', () => {
  it('each task is one, on its day, named by the caller', () => {
    const events = workEvents(list, ({ day, task }) => `${isoDate(day)}-${task}@farm.example`, names);
    expect(events[1]).toEqual({
      uid: '2031-01-21-move@farm.example',
      day: newYear + 20,
      summary: 'Move 15 plants from nursery boards onto 3 finishing boards',
      description: '0.08 hours',
    });
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(list.length);
  });

  it('say nothing of hours where none are known', () => {
    const [event] = workEvents(workList(found, [], newYear, 1), () => 'a', names);
    expect(event?.description).toBe('');
  });
});
