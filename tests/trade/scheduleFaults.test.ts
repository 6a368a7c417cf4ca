import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { cropParts } from '../../src/model/cropParts';
import { evaluatePlan } from '../../src/model/values';
import { readSchedule } from '../../src/trade/schedule';
import { scheduleFaults, scheduleNotices, seasonFaults } from '../../src/trade/scheduleFaults';
import { evenSeason } from '../../src/trade/season';
import { modelOf, planOf } from '../model/table';
import { crop } from './crop';

const said = (text: string, turnaround = 0) => scheduleFaults(crop(text, turnaround)).map(({ message }) => message);

describe('a schedule that can be followed', () => {
  it.each(['10 boards every 2 d: 10 d at 60', '10 boards every 2 d: 0 d at 0, keeps 9; 10 d at 0.5'])('%s', (text) => {
    expect(said(text)).toEqual([]);
  });
});

describe('a fault says what is wrong and what would fix it:', () => {
  it.each([
    ['10 boards every 0 d: 10 d at 60', 'interval not above 0: 0 days. Give the days between two sowings.'],
    ['10 boards every -1 d: 10 d at 60', 'interval not above 0: -1 day. Give the days between two sowings.'],
    ['10 boards every 2 d: -3 d at 60', 'stage 1 time below 0: -3 days. Give 0 to skip the stage.'],
    ['10 boards every 2 d: 3 d at 0', 'stage 1 density not above 0: 0. Give the plants that one board carries.'],
    [
      '10 boards every 2 d: 9 d at 60; 3 d at 9, keeps 1.2',
      'stage 2 survival outside 0 to 100 %: 120 %. Give the share of its plants that leaves it alive and kept.',
    ],
    ['9 boards every 2 d: 3 d at 9, -4 boards', 'stage 1 boards below 0: -4. Give the boards that it has.'],
    ['9 boards every 2 d: 0 d at 9; 0 d at 4', 'no stage takes any time: stage 1, stage 2. Give one of them days.'],
    [
      '3 boards every 2 d: 10 d at 60',
      'boards too few for any batch: 3. A batch of one plant needs 5 on the fullest day: that is the least that works.',
    ],
  ])('%s', (text, message) => expect(said(text)).toEqual([message]));

  it('a turnaround below 0', () => {
    expect(said('9 boards every 2 d: 3 d at 9', -0.5)).toEqual([
      'turnaround below 0: -0.5 days. Give the days that a board is out of use between two crops, or 0.',
    ]);
  });

  it('the least number of boards does work', () => {
    expect(said('5 boards every 2 d: 10 d at 60')).toEqual([]);
    expect(said('4 boards every 2 d: 3 d at 60; 3 d at 1')).toEqual([]);
    expect(said('2 boards every 2 d: 3 d at 60; 3 d at 1')).toEqual([
      'boards too few for any batch: 2. A batch of one plant needs 3 on the fullest day: that is the least that works.',
    ]);
  });

  it('all of them at once', () => {
    expect(scheduleFaults(crop('10 boards every 0 d: -3 d at 0, keeps -1')).map(({ code }) => code)).toEqual([
      'schedule-interval',
      'schedule-time',
      'schedule-density',
      'schedule-survival',
    ]);
  });
});

describe('a fault names its entry', () => {
  it('by the crop column', () => {
    const model = modelOf(`
      bed [board]: 100 | crop: boards
      every [day]: 2 | crop: interval
      young [day]: 10 | crop: stage 1 time
      holes [plant/board]: 0 | crop: stage 1 density
    `);
    const schedule = readSchedule(model.cells, evaluatePlan(planOf(model)));
    if (schedule === undefined) throw new Error('no schedule');
    expect(scheduleFaults(schedule, cropParts(model.cells)).map(({ where }) => where)).toEqual([
      { row: 5, column: 'crop', cell: 'holes', text: '0' },
    ]);
  });

  it('a part without a number is told too', () => {
    const gap = { ...crop('9 boards every 2 d: 3 d at 9'), boards: decimal(NaN) };
    const [first] = gap.stages;
    const stages = first ? [{ ...first, density: decimal(NaN) }] : [];
    expect(scheduleFaults({ ...gap, stages }).map(({ message }) => message)).toEqual([
      'no value in the crop schedule: boards. Give it an entry, or mend the one that it has.',
      'no value in the crop schedule: stage 1 density. Give it an entry, or mend the one that it has.',
    ]);
  });
});

describe('the season', () => {
  it.each([0, 366, 12.5, NaN])('has no day %d', (day) => {
    const closed = [{ number: 3, from: day, to: 5 }];
    expect(seasonFaults({ ...evenSeason, firstSowing: day, closed }).map(({ message }) => message)).toEqual([
      `first sowing is no day of the year: ${day}. Give a whole number from 1 (1 January) to 365 (31 December).`,
      `closed 3 from is no day of the year: ${day}. Give a whole number from 1 (1 January) to 365 (31 December).`,
    ]);
  });

  it('has no time below 0 in a month', () => {
    const monthTimes = [[], [undefined, decimal(-2), decimal(0), decimal(NaN)]];
    expect(seasonFaults({ ...evenSeason, monthTimes }).map(({ message }) => message)).toEqual([
      'stage 2 time in 02 below 0: -2 days. Give 0 to skip the stage in that month.',
      'no value in the crop schedule: stage 2 time in 04. Give it an entry, or mend the one that it has.',
    ]);
  });
});

describe('worth knowing', () => {
  const notices = (text: string, from: number, to: number) =>
    scheduleNotices(crop(text), { ...evenSeason, closed: [{ number: 1, from, to }] }).map(({ message }) => message);

  it('a closed time longer than a stage', () => {
    expect(notices('99 boards every 2 d: 10 d at 60; 20 d at 20', 350, 5)).toEqual([
      'closed time 1 longer than stage 1 (10 days), stage 2 (20 days): 21 days. Every batch in it waits on its boards until the closed time ends. Make it shorter, or end sowing earlier.',
    ]);
    expect(notices('99 boards every 2 d: 10 d at 60; 20 d at 20', 101, 110)).toEqual([]);
  });

  it('a million boards', () => {
    expect(notices('1000000 boards every 2 d: 10 d at 60', 101, 102)).toEqual([
      'very many boards: 1000000. Everything computes all the same. Check that no digit is too many.',
    ]);
    expect(notices('999999 boards every 2 d: 10 d at 60', 101, 102)).toEqual([]);
  });
});
