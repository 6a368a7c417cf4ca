import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Arithmetic } from '../../src/core/arithmetic';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';
import { functions } from '../../src/formula/functions';
import { wholeBatch } from '../../src/formula/wholeBatch';
import { largestBatch, type Found, type Sowing } from './sownBatches.oracle';

// Source: design.md, "Whole boards", simulated batch by batch in sownBatches.oracle.ts; no publication.

/** What the engine finds, also as a function of formulas; survivals and times are divided in its own arithmetic. */
function found<T>(m: Arithmetic<T>, { perDay, interval, boards, stages }: Sowing): Found {
  const quotient = (a: number, b: number): T => m.divide(m.whole(a), m.whole(b));
  const args = stages.flatMap((s) => [quotient(s.moments, perDay), quotient(s.plants, s.on), quotient(s.kept, 100)]);
  const all = [m.whole(boards), quotient(interval, perDay), ...args];
  const { batch, boardsUsed, stages: loads } = wholeBatch(m, all);
  expect(m.toNumber(functions.get('whole_batch')!.compute(m, all))).toBe(m.toNumber(batch));
  return { batch: m.toNumber(batch), boardsUsed, stages: loads.filter((_, i) => stages[i]!.moments > 0) };
}

const stage = fc.record({
  moments: fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min: 1, max: 40 }) },
    { weight: 1, arbitrary: fc.constant(0) },
  ),
  plants: fc.integer({ min: 1, max: 60 }),
  on: fc.constantFrom(1, 1, 1, 2, 3, 7),
  kept: fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(100, 95, 90, 80, 50) },
    { weight: 4, arbitrary: fc.integer({ min: 1, max: 100 }) },
    { weight: 1, arbitrary: fc.constant(0) },
  ),
});

const sowing: fc.Arbitrary<Sowing> = fc
  .record({
    perDay: fc.constantFrom(1, 1, 2, 3, 7, 10),
    interval: fc.integer({ min: 1, max: 25 }),
    boards: fc.oneof(fc.integer({ min: 0, max: 15 }), fc.integer({ min: 0, max: 200 })),
    stages: fc.array(stage, { minLength: 1, maxLength: 4 }),
  })
  .filter(({ stages }) => stages.some(({ moments }) => moments > 0));

describe('whole batches', { timeout: 120_000 }, () => {
  it('are what following every batch finds, for thousands of schedules, exact and float', () => {
    let none = 0;
    const numRuns = 4000;
    fc.assert(
      fc.property(sowing, (schedule) => {
        const expected = largestBatch(schedule);
        none += Number(expected.batch === 0);
        expect(found(exact, schedule)).toEqual(expected);
        expect(found(float, schedule)).toEqual(expected);
      }),
      { numRuns, seed: 1 },
    );
    expect(none / numRuns).toBeLessThan(0.5);
  });

  it('and for hundreds with thousands of boards', () => {
    const large = fc
      .tuple(sowing, fc.integer({ min: 1000, max: 20_000 }))
      .map(([schedule, boards]) => ({ ...schedule, boards }));
    fc.assert(
      fc.property(large, (schedule) => {
        const expected = largestBatch(schedule);
        expect(found(exact, schedule)).toEqual(expected);
        expect(found(float, schedule)).toEqual(expected);
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  const two = (boards: number, interval: number, perDay = 1): Sowing => ({
    perDay,
    interval,
    boards,
    stages: [
      { moments: 14, plants: 72, on: 1, kept: 95 },
      { moments: 21, plants: 18, on: 1, kept: 98 },
    ],
  });
  const one = (moments: number, interval: number, perDay: number, boards: number): Sowing => ({
    perDay,
    interval,
    boards,
    stages: [{ moments, plants: 10, on: 1, kept: 100 }],
  });

  it.each<[claim: string, schedule: Sowing]>([
    ['a week’s sowing on 120 boards', two(120, 7)],
    ['10,000 boards', two(10_000, 7)],
    ['1,000,000 boards', two(1_000_000, 7)],
    ['1,000,000 boards, sown every third of a day', two(1_000_000, 1, 3)],
    ['fewer boards than one batch needs', two(1, 7)],
    ['no boards', two(0, 7)],
    ['boards for one plant in each stage and not for two batches', two(6, 7)],
    ['a third of a week on an interval of a third of a week', one(7, 7, 3, 9)],
    ['two thirds of a week on an interval of a third', one(14, 7, 3, 9)],
    ['three tenths of a day on an interval of a tenth', one(3, 1, 10, 9)],
    ['a stage shorter than the interval', one(3, 7, 1, 9)],
    ['a stage one moment longer than the interval', one(8, 7, 1, 9)],
    ['an interval of a moment', one(40, 1, 10, 100)],
    [
      'a first stage of no time, its survival with it',
      { ...two(50, 7), stages: [{ moments: 0, plants: 1, on: 1, kept: 10 }, ...two(50, 7).stages] },
    ],
    [
      'nothing survives the first stage',
      { ...two(50, 7), stages: [{ moments: 7, plants: 20, on: 1, kept: 0 }, ...two(50, 7).stages] },
    ],
  ])('%s', (_claim, schedule) => {
    const expected = largestBatch(schedule);
    expect(found(exact, schedule)).toEqual(expected);
    expect(found(float, schedule)).toEqual(expected);
  });

  it('stay within the boards, and one plant more does not', () => {
    fc.assert(
      fc.property(sowing, (schedule) => {
        const { batch, boardsUsed } = found(float, schedule);
        expect(boardsUsed).toBeLessThanOrEqual(schedule.boards);
        const enough = found(float, { ...schedule, boards: boardsUsed });
        expect(enough.batch).toBe(batch);
        if (boardsUsed > 0) expect(found(float, { ...schedule, boards: boardsUsed - 1 }).batch).toBeLessThan(batch);
      }),
      { numRuns: 1000, seed: 1 },
    );
  });

  it('are never more than the balanced flow carries', () => {
    fc.assert(
      fc.property(sowing, (schedule) => {
        let share = 1;
        let boardMoments = 0;
        for (const { moments, plants, on, kept } of schedule.stages.filter((s) => s.moments > 0)) {
          boardMoments += (share * moments * on) / plants;
          share *= kept / 100;
        }
        const balanced = (schedule.boards * schedule.interval) / boardMoments;
        expect(found(exact, schedule).batch).toBeLessThanOrEqual(balanced * (1 + 1e-12));
      }),
      { numRuns: 1000, seed: 1 },
    );
  });
});
