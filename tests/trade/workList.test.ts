import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { isoDate } from '../../src/trade/civilDate';
import type { WorkStep } from '../../src/trade/labour';
import { workList } from '../../src/trade/workList';
import { newYear, run } from './running';

const steps: WorkStep[] = [
  { task: 'sow', seconds: 36, per: 'plant' },
  { task: 'move', seconds: 18, per: 'plant' },
  { task: 'harvest', seconds: 72, per: 'plant' },
  { task: 'wash', seconds: 900, per: 'board' },
];
// Batches every second day: 20 on 2 boards, 15 moved to 3 after 4 days, 14 kept after 3.5 more.
const found = run('30 boards every 2 d: 4 d at 10, keeps 0.75; 3.5 d at 5, keeps 0.9', { batch: decimal(20) });
const list = workList(found, steps, newYear + 20, 4);

describe('the work list', () => {
  it('says day by day what is to be done, boards emptied before they are filled', () => {
    expect(
      list.map(({ day, task, from, to, plants, boards }) => [isoDate(day), task, from, to, plants, boards]),
    ).toEqual([
      ['2031-01-21', 'wash', 0, undefined, 0, 2],
      ['2031-01-21', 'move', 0, 1, 15, 3],
      ['2031-01-21', 'sow', undefined, 0, 20, 2],
      ['2031-01-22', 'harvest', 1, undefined, 14, 3],
      ['2031-01-22', 'wash', 1, undefined, 0, 3],
      ['2031-01-23', 'wash', 0, undefined, 0, 2],
      ['2031-01-23', 'move', 0, 1, 15, 3],
      ['2031-01-23', 'sow', undefined, 0, 20, 2],
      ['2031-01-24', 'harvest', 1, undefined, 14, 3],
      ['2031-01-24', 'wash', 1, undefined, 0, 3],
    ]);
    expect(list.slice(0, 4).map(({ hours }) => hours)).toEqual([0.5, 0.075, 0.2, 0.28]);
  });

  it('puts the batches of one day together', () => {
    const often = run('30 boards every 0.5 d: 2 d at 10', { batch: decimal(10) });
    const [harvest, wash, sow] = workList(often, steps, newYear + 10, 1);
    expect([harvest, wash, sow].map((task) => [task?.task, task?.plants, task?.boards])).toEqual([
      ['harvest', 20, 2],
      ['wash', 0, 2],
      ['sow', 20, 2],
    ]);
    expect(harvest?.hours).toBeCloseTo(0.4, 12);
  });

  it('is a week where nothing else is said, and holds each event of its days once', () => {
    const week = workList(found, steps, newYear + 100);
    const events = found.events.filter(({ day }) => day >= 100 && day < 107);
    const plants = (all: readonly { plants: number }[]): number => all.reduce((sum, each) => sum + each.plants, 0);
    expect(new Set(week.map(({ day }) => day - newYear))).toEqual(new Set([100, 101, 102, 103, 104, 105, 106]));
    expect(plants(week)).toBe(plants(events));
  });

  it('is empty outside the calendar', () => {
    expect(workList(found, steps, newYear + 365)).toEqual([]);
    expect(workList(found, steps, newYear - 7)).toEqual([]);
  });
});
