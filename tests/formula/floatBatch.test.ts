import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';
import { floatBatch, lastThat, mostBoards, runningStages, tooLarge } from '../../src/formula/floatBatch';
import { largestBatch } from '../../src/formula/wholeBatch';

describe('stages that take time', () => {
  it.each<[claim: string, args: number[], running: number[] | undefined]>([
    ['one', [10, 7, 14, 12, 1], [2]],
    ['all but those of time 0, whatever else these hold', [10, 7, 0, -1, 9, 14, 12, 1], [5]],
    ['none where all times are 0', [10, 7, 0, 12, 1], undefined],
    ['none with a time below 0', [10, 7, 14, 12, 1, -1, 12, 1], undefined],
    ['none with a density of 0', [10, 7, 14, 0, 1], undefined],
    ['none with a survival above 1', [10, 7, 14, 12, 1.01], undefined],
    ['none without an interval', [10, 0, 14, 12, 1], undefined],
    ['none where the boards are not known', [NaN, 7, 14, 12, 1], undefined],
  ])('are %s', (_claim, args, running) => expect(runningStages(args)).toEqual(running));
});

it('most boards are those of the fullest instant', () => {
  // Batches in two stages at three instants, two and five boards each: 12, 11, 9.
  expect(mostBoards([1, 2, 3, 1, 2, 1], [2, 5])).toBe(12);
});

describe('the last number for which a condition holds is found', () => {
  it.each([1, 5, 999, 1000, 1001, 1_000_000, NaN, 1e300])('from a guess of %d', (guess) => {
    expect(lastThat((n) => n <= 1000, guess)).toBe(1000);
  });

  it('without looking far where the guess is right', () => {
    const looked: number[] = [];
    expect(lastThat((n) => (looked.push(n), n <= 1000), 1000)).toBe(1000);
    expect(looked).toEqual([1000, 1001]);
  });

  it('at 0 where it never holds', () => expect(lastThat(() => false, 10)).toBe(0));

  it('beyond what is looked at where it always holds', () => {
    expect(lastThat(() => true, 10)).toBeGreaterThanOrEqual(tooLarge);
  });
});

const times = fc.oneof(
  fc.constantFrom(0, 7, 14, 1 / 3),
  fc.integer({ min: 1, max: 60 }),
  fc.double({ min: 0.1, max: 60 }),
);
const densities = fc.oneof(fc.integer({ min: 1, max: 200 }), fc.double({ min: 0.01, max: 20, noNaN: true }));
const survivals = fc.oneof(fc.constantFrom(1, 0.5, 0.975, 1 / 3, 0), fc.double({ min: 0.01, max: 1, noNaN: true }));
const stages = fc.array(fc.tuple(times, densities, survivals), { minLength: 1, maxLength: 4 });
const boards = fc.oneof(fc.integer({ min: 0, max: 3000 }), fc.double({ min: -5, max: 5000, noNaN: true }));
const intervals = fc.oneof(fc.constantFrom(1, 2, 7, 1 / 3), fc.double({ min: 0.5, max: 10, noNaN: true }));
const schedules = fc.tuple(boards, intervals, stages).map(([n, interval, all]) => [n, interval, ...all.flat()]);

describe('the search in float64', () => {
  it('agrees with the one over any arithmetic, bit for bit', { timeout: 60_000 }, () => {
    // The same arithmetic under another name takes the general way.
    const general = { ...float };
    fc.assert(
      fc.property(schedules, (args) => {
        expect(largestBatch(float, args)).toBe(largestBatch(general, args));
      }),
      { numRuns: 4000, seed: 1 },
    );
  });

  it('is what the exact search finds as well, where no number is near a tie', { timeout: 60_000 }, () => {
    const whole = schedules.map((args) => args.map((x) => Number(x.toPrecision(3))));
    fc.assert(
      fc.property(whole, (args) => {
        const batch = largestBatch(
          exact,
          args.map((x) => exact.read(String(x))),
        );
        expect(largestBatch(float, args)).toBe(exact.toNumber(batch));
      }),
      { numRuns: 1000, seed: 1 },
    );
  });

  it('gives no batch where nothing bounds it', () => {
    expect(floatBatch([1e300, 7, 14, 12, 1], [2])).toBeGreaterThanOrEqual(tooLarge);
    expect(largestBatch(float, [1e300, 7, 14, 12, 1])).toBeNaN();
  });

  // n boards for a day in seven, beside 100 batches on ceil(n/1000) boards each: 4,500 + 500 fill the 5,000.
  it('finds its way where one stage saves a board with each plant and another with a thousand', () => {
    expect(largestBatch(float, [5000, 7, 1, 1, 1, 700, 1000, 1])).toBe(4500);
  });
});
