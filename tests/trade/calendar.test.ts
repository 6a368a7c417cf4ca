import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { cropParts } from '../../src/model/cropParts';
import { calendar, calendarBatch, type Calendar, type CalendarQuestion } from '../../src/trade/calendar';
import { wholeBoards } from '../../src/trade/schedule';
import { evenSeason } from '../../src/trade/season';
import { modelOf } from '../model/table';
import { cropOf, quarterCrops } from './crop';
import { closing, newYear, run } from './running';

const codes = ({ faults, notices }: Calendar): string[] => [...faults, ...notices].map(({ code }) => code);

describe('over-full days', () => {
  it('are those on which more boards are in use than there are', () => {
    const found = run('5 boards every 3 d: 6 d at 10', { days: 12, batch: decimal(25) });
    expect(found.overFull).toEqual([3, 4, 5, 6, 7, 8, 9, 10, 11]);
    expect(found.pictures.slice(2, 5).map(({ inUse }) => inUse)).toEqual([3, 6, 6]);
  });

  it('are told by stage where boards are set by hand', () => {
    const found = run('9 boards every 3 d: 3 d at 10, 2 boards; 6 d at 10', { days: 12, batch: decimal(25) });
    expect(found.overFullStages).toEqual([[0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], []]);
    expect(found.overFull).toEqual([]);
  });

  it('count what lasts for part of a day', () => {
    const found = run('2 boards every 10 d: 2.25 d at 10; 3 d at 5', { days: 7, batch: decimal(20) });
    expect(found.pictures.map(({ boards }) => boards.join('+'))).toEqual([
      '2+0',
      '2+0',
      '0+4',
      '0+4',
      '0+4',
      '0+4',
      '0+0',
    ]);
    expect(found.pictures.map(({ most }) => most.join('+'))).toEqual(['2+0', '2+0', '2+4', '0+4', '0+4', '0+4', '0+0']);
    expect(found.overFull).toEqual([2, 3, 4, 5]);
  });
});

/** Places held × days from one instant to another, stay by stay. */
function placeDays({ batches }: Calendar, stage: number, from: number, to: number): number {
  const stays = batches.flatMap((batch) => batch.stays).filter((stay) => stay.stage === stage);
  return stays.reduce(
    (sum, stay) => sum + stay.plants * Math.max(0, Math.min(stay.to, to) - Math.max(stay.from, from)),
    0,
  );
}

describe('in steady running', () => {
  const filled = (quarter: { interval: number; stages: readonly { quarters: number }[] }): number =>
    quarter.stages.reduce((sum, { quarters }) => sum + quarters, 0) / 4;

  it('the calendar gives the formulas: boards at the peak and by stage, flow, and not one plant more fits', () => {
    fc.assert(
      fc.property(quarterCrops(), (quarter) => {
        const schedule = cropOf(quarter);
        const whole = wholeBoards(schedule);
        const interval = quarter.interval / 4;
        const length = Math.ceil(filled(quarter) + 8 * interval + 1);
        const found = calendar({ schedule, start: newYear, days: length });
        expect(found.batch).toBe(whole.batch.toNumber());
        const more = calendar({ schedule, start: newYear, days: length, batch: whole.batch.plus(1) });
        expect(more.overFull.length).toBeGreaterThan(0);
        fc.pre(found.batch > 0);
        expect(found.overFull).toEqual([]);
        expect(Math.max(...found.pictures.map(({ inUse }) => inUse))).toBe(whole.boardsUsed);
        const own = whole.stages.map((_, i) => Math.max(...found.pictures.map(({ most }) => most[i] ?? NaN)));
        expect(own).toEqual(whole.stages.map(({ boards }) => boards));
        const from = filled(quarter) + interval;
        const kept = found.batches.filter(({ harvested = 0 }) => harvested >= from && harvested < from + 4 * interval);
        const perWeek = (kept.reduce((sum, { finished }) => sum + finished, 0) / (4 * interval)) * 7;
        expect(perWeek / whole.finishedPerWeek.toNumber()).toBeCloseTo(1, 10);
      }),
      { seed: 37, numRuns: 300 },
    );
  }, 60_000);

  it('Little’s law holds stage by stage: places held = plants entering a day × days', () => {
    fc.assert(
      fc.property(quarterCrops(), (quarter) => {
        const interval = quarter.interval / 4;
        const from = filled(quarter) + interval;
        const to = from + 4 * interval;
        const found = calendar({
          schedule: cropOf(quarter),
          start: newYear,
          days: Math.ceil(to + filled(quarter) + 1),
          batch: decimal(97),
        });
        quarter.stages.forEach(({ quarters }, stage) => {
          const entering = found.batches.flatMap(({ stays }) =>
            stays.filter((stay) => stay.stage === stage && stay.from >= from && stay.from < to),
          );
          const flow = entering.reduce((sum, { plants }) => sum + plants, 0) / (to - from);
          const held = placeDays(found, stage, from, to) / (to - from);
          expect(held).toBeCloseTo((flow * quarters) / 4, 7);
          expect(entering.length).toBe(quarters > 0 ? 4 : 0);
        });
      }),
      { seed: 38, numRuns: 300 },
    );
  }, 60_000);

  // econ-E12 (textbook, quesba.com 278669): 120 jobs a day for 4 days are 480 in the shop; the same from day pictures.
  it('120 plants a day for 4 days are 480 places', () => {
    const found = run('4 boards every 1 d: 4 d at 120', { days: 30 });
    expect(found.batch).toBe(120);
    expect(found.pictures.slice(4).every(({ plants }) => plants[0] === 480)).toBe(true);
  });

  it('with a turnaround the stages’ own boards are the formula’s, and nothing is over-full', () => {
    fc.assert(
      fc.property(quarterCrops(), fc.integer({ min: 1, max: 12 }), (quarter, turn) => {
        const schedule = { ...cropOf(quarter), turnaround: decimal(turn).dividedBy(4) };
        const length = Math.ceil(filled(quarter) + 3 * turn + (4 * quarter.interval) / 4 + 1);
        const found = calendar({ schedule, start: newYear, days: length });
        expect(found.overFull).toEqual([]);
        expect(found.batch).toBe(calendarBatch(schedule));
        const whole = wholeBoards(schedule);
        expect(found.batch).toBeLessThanOrEqual(whole.batch.toNumber());
        expect(codes(found).includes('calendar-turnaround')).toBe(found.batch < whole.batch.toNumber());
        fc.pre(found.batch > 0 && found.batch === whole.batch.toNumber());
        const own = whole.stages.map((_, i) => Math.max(...found.pictures.map(({ most }) => most[i] ?? NaN)));
        expect(own).toEqual(whole.stages.map(({ boards }) => boards));
      }),
      { seed: 39, numRuns: 300 },
    );
  }, 60_000);

  it('a batch lowered by the turnaround could not be one plant larger', () => {
    const text = '6 boards every 4 d: 4 d at 10; 4 d at 10';
    const found = run(text, { turnaround: 1 });
    expect(found.notices.map(({ message }) => message)).toEqual([
      'batch smaller because of the turnaround: 10. The formula for whole boards gives 20, but the boards that a batch left are still out of use when it stands in the next stage.',
    ]);
    expect(run(text, { turnaround: 1, batch: decimal(11) }).overFull.length).toBeGreaterThan(0);
  });
});

describe('bad input', () => {
  const fine = '9 boards every 3 d: 6 d at 10';

  it.each<[claim: string, question: Partial<CalendarQuestion>, code: string]>([
    ['a batch of 0', { batch: decimal(0) }, 'calendar-batch'],
    ['half a plant', { batch: decimal('10.5') }, 'calendar-batch'],
    ['a batch without a number', { batch: decimal(NaN) }, 'calendar-batch'],
    ['a batch without end', { batch: decimal('1e12') }, 'calendar-batch'],
    ['no days', { days: 0 }, 'calendar-days'],
    ['half a day', { days: 1.5 }, 'calendar-days'],
    ['a hundred years', { days: 36_500 }, 'calendar-days'],
  ])('%s', (_claim, question, code) => {
    const found = run(fine, question);
    expect(codes(found)).toEqual([code]);
    expect([found.batches, found.events, found.pictures]).toEqual([[], [], []]);
  });

  it.each([
    ['9 boards every 0 d: 6 d at 10', ['schedule-interval']],
    ['9 boards every 3 d: -6 d at 10', ['schedule-time']],
    ['9 boards every 3 d: 6 d at 0', ['schedule-density']],
    ['9 boards every 3 d: 6 d at 10, keeps 1.5', ['schedule-survival']],
    ['9 boards every 3 d: 0 d at 10', ['schedule-empty']],
    ['1 boards every 3 d: 6 d at 10', ['schedule-boards']],
    ['9 boards every 0.001 d: 0.002 d at 10', ['calendar-sowings']],
  ])('%s', (text, expected) => {
    const found = run(text);
    expect(codes(found)).toEqual(expected);
    expect(found.batches).toEqual([]);
  });

  it('too few boards still follow a batch set by hand, over-full', () => {
    const found = run('1 boards every 3 d: 6 d at 10', { batch: decimal(10), days: 10 });
    expect(codes(found)).toEqual(['schedule-boards']);
    expect(found.overFull).toEqual([3, 4, 5, 6, 7, 8, 9]);
  });

  it('a year without a sowing', () => {
    const closed = run(fine, { season: closing([1, 365]), days: 365 });
    expect(closed.faults.map(({ message }) => message)).toEqual([
      'nothing is sown in the calendar: 365 days. All sowings fall in closed times: open one, or move the first sowing.',
    ]);
    expect(closed.skipped).toHaveLength(122);
    const late = run(fine, { season: { ...evenSeason, firstSowing: 200 }, days: 100 });
    expect(late.faults.map(({ message }) => message)).toEqual([
      'nothing is sown in the calendar: 100 days. The first sowing falls after the end: move it, or look at more days.',
    ]);
  });

  it('a closed time longer than a stage is told, and followed', () => {
    const found = run(fine, { season: closing([20, 40]), days: 60 });
    expect(codes(found)).toEqual(['season-closed-long']);
    // The last sowing before, on day 18, would be harvested on day 24 and waits until day 40.
    expect(
      found.batches
        .filter(({ sown }) => sown < 20)
        .map(({ harvested }) => harvested)
        .slice(-3),
    ).toEqual([18, 40, 40]);
  });

  it('a faulty season is told, and the rest goes on without it', () => {
    const season = {
      firstSowing: 400,
      closed: [{ number: 1, from: 0, to: 9 }],
      monthTimes: [[decimal(-4), decimal(NaN)]],
    };
    const found = run(fine, { season, days: 60 });
    expect(codes(found)).toEqual(['season-day', 'season-day', 'season-time', 'schedule-unknown']);
    expect(found.batches).toHaveLength(20);
    expect(new Set(found.batches.flatMap(({ stays }) => stays.map(({ from, to }) => to - from)))).toEqual(new Set([6]));
  });

  it('a fault names its entry', () => {
    const { cells } = modelOf('bed [board]: 9 | crop: boards\n every [day]: 0 | crop: interval');
    const found = run('9 boards every 0 d: 6 d at 10', { parts: cropParts(cells) });
    expect(found.faults.map(({ where }) => where.cell)).toEqual(['every']);
  });

  it('a million boards are no trouble', () => {
    const found = run('1000000 boards every 2 d: 10 d at 60; 14 d at 21');
    expect(codes(found)).toEqual(['schedule-many-boards']);
    expect(found.overFull).toEqual([]);
  });

  it('a stage that outlasts the calendar is followed to its end', () => {
    const found = run('9 boards every 3 d: 1e9 d at 1', { batch: decimal(1), days: 10 });
    expect(found.batches.map(({ harvested }) => harvested)).toEqual([undefined, undefined, undefined, undefined]);
    expect(found.pictures[9]?.inUse).toBe(4);
  });
});
