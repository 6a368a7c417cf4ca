import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { exportTable } from '../../src/files/exportTable';
import { isoDate } from '../../src/trade/civilDate';
import type { WorkStep } from '../../src/trade/labour';
import type { CropNames } from '../../src/trade/stageNames';
import { taskInWords, workEvents, workList, workTable } from '../../src/trade/workList';
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
const names: CropNames = {
  plant: { one: 'plant', many: 'plants' },
  board: { one: 'board', many: 'boards' },
  stages: ['nursery', 'finishing'],
};

describe('the work list', () => {
  it('says day by day what is to be done, boards emptied before they are filled', () => {
    expect(list.map((task) => `${isoDate(task.day)} ${taskInWords(task, names)}`)).toEqual([
      '2031-01-21 Wash 2 nursery boards',
      '2031-01-21 Move 15 plants from nursery boards onto 3 finishing boards',
      '2031-01-21 Sow 20 plants on 2 nursery boards',
      '2031-01-22 Harvest 14 plants off 3 finishing boards',
      '2031-01-22 Wash 3 finishing boards',
      '2031-01-23 Wash 2 nursery boards',
      '2031-01-23 Move 15 plants from nursery boards onto 3 finishing boards',
      '2031-01-23 Sow 20 plants on 2 nursery boards',
      '2031-01-24 Harvest 14 plants off 3 finishing boards',
      '2031-01-24 Wash 3 finishing boards',
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

  it('one of a thing is one', () => {
    const single = run('9 boards every 9 d: 2 d at 1', { batch: decimal(1), days: 9 });
    expect(workList(single, [], newYear, 9).map((task) => taskInWords(task, names))).toEqual([
      'Sow 1 plant on 1 nursery board',
      'Harvest 1 plant off 1 nursery board',
      'Wash 1 nursery board',
    ]);
  });
});

describe('as a table', () => {
  it('it has a header, numbers as numbers, and stages by name', () => {
    expect(exportTable(workTable(list.slice(0, 4), names))).toBe(
      [
        'date,task,from,to,plants,boards,hours',
        '2031-01-21,wash,nursery,,,2,0.50',
        '2031-01-21,move,nursery,finishing,15,3,0.08',
        '2031-01-21,sow,,nursery,20,2,0.20',
        '2031-01-22,harvest,finishing,,14,3,0.28',
        '',
      ].join('\r\n'),
    );
  });

  it('a stage’s name cannot run as a formula in another program', () => {
    expect(exportTable(workTable(list.slice(1, 2), { ...names, stages: ['=1+1', 'wide'] }))).toContain(`'=1+1`);
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
