import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeBoards } from '../../src/trade/schedule';
import { roundingLoss, type RoundingLoss } from '../../src/trade/roundingLoss';
import { crop, cropOf, quarterCrops } from './crop';

function lossOf(text: string, turnaround = 0): RoundingLoss {
  const loss = roundingLoss(crop(text, turnaround));
  if (loss === undefined) throw new Error('the schedule has a fault');
  return loss;
}

describe('what whole boards lose', () => {
  it('nothing where batches fill their boards and stages are multiples of the interval', () => {
    const { share, free, partEmpty, waiting } = lossOf('10 boards every 2 d: 4 d at 30; 8 d at 15');
    expect([share, free.boards, partEmpty.boards, waiting.boards].map(Number)).toEqual([0, 0, 0, 0]);
  });

  // Worked by hand: a batch of 60 on 2 boards of 30 for 5 of every 2 days: 3 or 2 batches at once, 2.5 on average.
  it('boards wait where a stage is no multiple of the interval', () => {
    const { waiting, stages, free, partEmpty } = lossOf('6 boards every 2 d: 5 d at 30');
    expect(waiting.boards.toNumber()).toBe(1);
    expect(waiting.finishedPerWeek.toNumber()).toBe(42);
    expect(stages[0]).toMatchObject({ number: 1, isMultiple: false });
    expect(stages[0]?.waiting.toNumber()).toBe(1);
    expect([free.boards.toNumber(), partEmpty.boards.toNumber()]).toEqual([0, 0]);
  });

  it('boards stay free where no whole number of batches fits', () => {
    expect(lossOf('7 boards every 2 d: 4 d at 30').free.boards.toNumber()).toBe(1);
  });

  // 20 enter the second stage, on two boards of 15: 10 places empty.
  it('places stay empty on the last board of a batch', () => {
    const { stages, partEmpty } = lossOf('4 boards every 2 d: 2 d at 10; 2 d at 15');
    expect(stages.map(({ emptyPlaces }) => emptyPlaces.toNumber())).toEqual([0, 10]);
    expect(partEmpty.boards.toNumber()).toBeCloseTo(2 / 3, 15);
  });

  it('a turnaround makes a multiple of what was none', () => {
    expect(lossOf('6 boards every 2 d: 3 d at 30', 1).stages[0]?.isMultiple).toBe(true);
  });

  it('the next larger batch: the boards that it needs, and the most they carry', () => {
    const { next } = lossOf('7 boards every 2 d: 4 d at 30');
    expect(next.boards).toBe(8);
    expect(next.missing.toNumber()).toBe(1);
    expect(next.batch.toNumber()).toBe(120);
    expect(next.finishedPerWeek.toNumber()).toBe(420);
  });

  it('with too few boards all is lost, and the next batch is the least that works', () => {
    const { share, next, free } = lossOf('1 boards every 2 d: 4 d at 30');
    expect([Number(share), next.boards, Number(next.batch), Number(free.boards)]).toEqual([1, 2, 30, 1]);
  });

  it('its parts add up to balanced − whole in random schedules', () => {
    fc.assert(
      fc.property(quarterCrops(), (quarter) => {
        const loss = roundingLoss(cropOf(quarter));
        if (loss === undefined) throw new Error('the schedule has a fault');
        const { balancedPerWeek, wholePerWeek, free, partEmpty, waiting, stages, next } = loss;
        const sum = free.finishedPerWeek.plus(partEmpty.finishedPerWeek).plus(waiting.finishedPerWeek);
        expect(sum.minus(balancedPerWeek.minus(wholePerWeek)).abs().lte(balancedPerWeek.times(1e-30))).toBe(true);
        expect(wholePerWeek.eq(wholeBoards(cropOf(quarter)).finishedPerWeek)).toBe(true);
        const byStage = stages.reduce((all, stage) => all + stage.partEmpty.boards.toNumber(), 0);
        expect(byStage).toBeCloseTo(partEmpty.boards.toNumber(), 9);
        expect([free, partEmpty, waiting].map(({ boards }) => boards.gte(-1e-30))).toEqual([true, true, true]);
        expect(next.batch.gt(wholeBoards(cropOf(quarter)).batch)).toBe(true);
        expect(next.missing.gt(0)).toBe(true);
      }),
      { seed: 35, numRuns: 300 },
    );
  }, 60_000);

  it.each(['9 boards every 0 d: 4 d at 30', '9 boards every 1 d: 4 d at 0', '0 boards every 1 d: 4 d at 5'])(
    'is not told for %s',
    (text) => {
      expect(roundingLoss(crop(text))).toBeUndefined();
    },
  );
});

// econ-E11, a textbook test-bank item (qoschin.com/qa/HAL8JQq9aR6H): stations with 290, 120, 240 and 190 s of work at a
// cycle of 300 s are idle for 10, 180, 60 and 110 s; 2.8 stations would do, so 3 at least; efficiency 840/1,200 = 70 %.
// Stations are stages with one board and one place, seconds are days, the cycle is the interval.
describe('line balance', () => {
  const line = crop('4 boards every 300 d: 290 d at 1; 120 d at 1; 240 d at 1; 190 d at 1');

  it('a station is idle where its board waits for the next batch', () => {
    const idle = roundingLoss(line)?.stages.map(({ waiting }) => waiting.times(300).toNumber().toFixed(9));
    expect(idle).toEqual(['10.000000000', '180.000000000', '60.000000000', '110.000000000']);
  });

  it('the boards in use at once are the least number of stations', () => {
    expect(wholeBoards({ ...line, boards: line.boards.minus(1) }).boardsUsed).toBe(3);
    expect(wholeBoards({ ...line, boards: line.boards.minus(2) }).batch.toNumber()).toBe(0);
  });
});
