import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { iCalendar } from '../../../../src/trade/iCalendar';
import type { WorkStep } from '../../../../src/trade/labour';
import { workList, type WorkTask } from '../../../../src/trade/workList';
import {
  byDay,
  fileName,
  isWithin,
  steadyWeek,
  taskText,
  uidOf,
  weekSentence,
} from '../../../../src/present/beds/work/week';
import { workEvents } from '../../../../src/present/beds/work/workFiles';
import { newYear, run } from '../../../trade/running';
import { english, englishDates, names, read } from '../given';

// 1 January 2031 is a Wednesday. A batch of 50 each week: 7 d in stage 1 on 1 board, 14 d in stage 2 on 5 boards.
const text = '11 boards every 7 d: 7 d at 50; 14 d at 10';
const year = run(text);
const steps: WorkStep[] = [
  { task: 'move', seconds: 36, per: 'plant' },
  { task: 'wash', seconds: 360, per: 'board' },
];
const listFrom = (day: number): WorkTask[] => workList(year, steps, day);

describe('the week that is shown first', () => {
  it('is the first whole one in which all stages are filled', () => {
    expect(steadyWeek(year) - newYear).toBe(21);
    expect(steadyWeek(run('11 boards every 2 d: 7 d at 50; 15 d at 10')) - newYear).toBe(28);
  });

  it('is the last whole one where nothing is harvested in the year', () => {
    expect(steadyWeek(run(text, { days: 20 })) - newYear).toBe(7);
    expect(steadyWeek(run(text, { days: 5 })) - newYear).toBe(0);
  });

  it('lies within the calendar or not', () => {
    expect([-1, 0, 357, 358].map((day) => isWithin(year, newYear + day))).toEqual([false, true, true, false]);
  });
});

describe('a week’s work', () => {
  // 50 plants × 36 s = 0.5 h, 6 boards × 360 s = 0.6 h.
  it('is said with its hours', () => {
    expect(read(weekSentence(listFrom(newYear + 21), newYear + 21, true, names, english, englishDates))).toBe(
      'In the week from 22 January 2031: sow 50 plants, move 50 plants, harvest 50 plants, wash 6 boards. That takes 1.1 hours.',
    );
  });

  it('names only what there is to do, and that no times are counted', () => {
    expect(read(weekSentence(listFrom(newYear), newYear, false, names, english, englishDates))).toBe(
      'In the week from 1 January 2031: sow 50 plants. No times are counted.',
    );
    expect(read(weekSentence([], newYear, true, names, english, englishDates))).toBe(
      'In the week from 1 January 2031 there is nothing to do.',
    );
  });

  it('stands day by day in the order of a working day', () => {
    const [only, ...others] = byDay(listFrom(newYear + 21));
    expect(others).toEqual([]);
    expect(only?.day).toBe(newYear + 21);
    expect(only?.tasks.map((task) => taskText(task, names))).toEqual([
      'Harvest off finishing boards',
      'Wash nursery boards',
      'Wash finishing boards',
      'Move from nursery to finishing boards',
      'Sow on nursery boards',
    ]);
  });
});

describe('files of the work', () => {
  it('carry the first day in their name', () => {
    expect(fileName(newYear, 'ics')).toBe('work-from-2031-01-01.ics');
  });

  it('name each task of a plan once, the same at every writing, whatever the plan is called', () => {
    const list = workList(run('30 boards every 2 d: 5 d at 50; 6 d at 20; 7 d at 10'), steps, newYear + 28);
    const uids = [
      ...list.map((task) => uidOf(task, 'a.csv', 'Näher, dran')),
      ...list.map((task) => uidOf(task, 'a.csv', 'B')),
    ];
    expect(new Set(uids).size).toBe(2 * list.length);
    expect(uidOf(list[0]!, 'a.csv', 'B')).toBe(uidOf({ ...list[0]!, plants: 1 }, 'a.csv', 'B'));
    expect(uids.every((name) => /^[\x21-\x7e]+$/.test(name))).toBe(true);
  });

  it('make a calendar file', () => {
    const events = workEvents(listFrom(newYear + 21), (task) => uidOf(task, 'a.csv', 'B'), names);
    const file = iCalendar(events, '20310101T060000Z') ?? '';
    expect(file.match(/BEGIN:VEVENT/g)).toHaveLength(5);
    expect(file).toContain('SUMMARY:Wash 5 finishing boards');
    expect(file).toContain(`DTSTART;VALUE=DATE:20310122`);
  });
});

it('a batch by hand is told in the week too', () => {
  const list = workList(run(text, { batch: decimal(30) }), steps, newYear);
  expect(read(weekSentence(list, newYear, true, names, english, englishDates))).toContain('sow 30 plants');
});
