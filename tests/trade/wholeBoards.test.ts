import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { wholeBoards } from '../../src/trade/schedule';
import { boardsFor, loadsOf, together } from '../../src/trade/steady';
import { crop, cropOf, quarterCrops } from './crop';
import { largestBatch } from './floatingBed.oracle';

describe('the largest batch on whole boards', () => {
  it('is the one that every batch tried on a pile of boards gives, in thousands of random schedules', () => {
    fc.assert(
      fc.property(quarterCrops(), (quarter) => {
        expect(wholeBoards(cropOf(quarter)).batch.toNumber()).toBe(largestBatch(quarter));
      }),
      { seed: 31, numRuns: 2500 },
    );
  }, 60_000);

  it.each([
    ['one board, one batch', '1 boards every 10 d: 10 d at 30', 30],
    ['a board freed at an instant is used at that instant', '2 boards every 5 d: 10 d at 30', 30],
    ['a moment more and it is not', '2 boards every 5 d: 10.000001 d at 30', 0],
    [
      'thirds of a day are not lost to rounding',
      '7 boards every 0.3333333333333333333333333333333333 d: 2.333333333333333333333333333333333 d at 8',
      8,
    ],
    ['fewer plants than places', '9 boards every 7 d: 14 d at 0.5', 2],
    ['a skipped stage loses nothing', '4 boards every 5 d: 0 d at 9, keeps 0.5; 10 d at 10', 20],
    [
      'losses are counted from the batch',
      '5 boards every 1 d: 1 d at 10, keeps 0.9; 1 d at 10, keeps 0.9; 1 d at 10',
      12,
    ],
    ['no boards, no batch', '0 boards every 5 d: 10 d at 10', 0],
  ])('%s', (_claim, text, batch) => {
    expect(wholeBoards(crop(text)).batch.toNumber()).toBe(batch);
  });

  it('10⁶ boards are no trouble', () => {
    const whole = wholeBoards(crop('1000000 boards every 2 d: 10 d at 60, keeps 0.975; 15 d at 21'));
    expect(whole.boardsUsed).toBeLessThanOrEqual(1_000_000);
    expect(
      boardsFor(crop('1 boards every 2 d: 10 d at 60, keeps 0.975; 15 d at 21'), whole.batch.toNumber() + 1),
    ).toBeGreaterThan(1_000_000);
  });

  it.each([
    ['boards', { boards: decimal(NaN) }],
    ['interval', { interval: decimal(NaN) }],
    ['turnaround', { turnaround: decimal(NaN) }],
    ['a turnaround below 0', { turnaround: decimal(-1) }],
  ])('is not known without %s', (_part, gap) => {
    const whole = wholeBoards({ ...crop('10 boards every 2 d: 10 d at 60'), ...gap });
    expect([whole.batch.isNaN(), whole.finishedPerWeek.isNaN()]).toEqual([true, true]);
  });
});

describe('what stands together', () => {
  it('gives the boards that the largest batch needs, and more for the next, in random schedules', () => {
    fc.assert(
      fc.property(quarterCrops(), (quarter) => {
        const schedule = cropOf(quarter);
        const whole = wholeBoards(schedule);
        const batch = whole.batch.toNumber();
        expect(boardsFor(schedule, batch + 1)).toBeGreaterThan(quarter.boards);
        fc.pre(batch > 0);
        expect(boardsFor(schedule, batch)).toBe(whole.boardsUsed);
        expect(loadsOf(schedule, batch)).toEqual(
          whole.stages.map(({ started, boardsEach }) => ({ started, boardsEach })),
        );
      }),
      { seed: 32, numRuns: 500 },
    );
  }, 60_000);

  it('a turnaround makes each stage longer for the formula, and lies beside the next stage on a farm', () => {
    const schedule = crop('10 boards every 4 d: 4 d at 10; 4 d at 10', 1);
    expect(boardsFor(schedule, 10, 'in the stage')).toBe(
      boardsFor(crop('10 boards every 4 d: 5 d at 10; 5 d at 10'), 10),
    );
    const onAFarm = together(schedule, 'beside the next').map((batches) => batches.join());
    expect(new Set(onAFarm)).toEqual(new Set(['2,2', '1,1']));
  });

  // In thirds of a day the four stages hold boards for 3, 3, 2 and 3 intervals: 11 boards for batches of one plant.
  it('does not take a rounding error for an interval', () => {
    const [third, two] = [1, 2].map((n) => decimal(n).dividedBy(3).toString());
    const text = `99 boards every ${third} d: ${two} d at 1; ${two} d at 1; ${third} d at 1; ${two} d at 1`;
    expect(boardsFor(crop(text, third), 1, 'beside the next')).toBe(11);
  });

  it('is not known for a schedule with a fault', () => {
    expect(boardsFor(crop('10 boards every 0 d: 4 d at 10'), 1)).toBeNaN();
  });
});
