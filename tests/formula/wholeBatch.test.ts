import { describe, expect, it } from 'vitest';
import type { Arithmetic } from '../../src/core/arithmetic';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';
import { wholeBatch, type StageLoad } from '../../src/formula/wholeBatch';
import { exactly, floating, type Given } from './given';

/** Batch, boards used and loads for boards, interval, then time, density and survival of each stage. */
function both(args: readonly string[]): { batch: number; boardsUsed: number; stages: readonly StageLoad[] }[] {
  const of = <T>(m: Arithmetic<T>) => {
    const { batch, ...rest } = wholeBatch(
      m,
      args.map((text) => m.read(text)),
    );
    return { batch: m.toNumber(batch), ...rest };
  };
  return [of(exact), of(float)];
}

describe('a schedule on whole boards, by hand:', () => {
  // Two weeks at 12 plants a board, sown weekly: two batches stand at once, each may take half of the ten boards.
  it('two batches share ten boards', () => {
    const expected = { batch: 60, boardsUsed: 10, stages: [{ started: 60, boardsEach: 5, boards: 10 }] };
    expect(both(['10', '7', '14', '12', '1'])).toEqual([expected, expected]);
  });

  // Eleven boards are no better: five each, one left over.
  it('a board that no batch can use stays empty', () => {
    for (const { batch, boardsUsed } of both(['11', '7', '14', '12', '1']))
      expect([batch, boardsUsed]).toEqual([60, 10]);
  });

  // A week at 72, then two weeks at 18 with 10 % lost before: per batch n/72 and two times 0.9 n/18 boards.
  it('losses are counted from the batch', () => {
    const expected = {
      batch: 160,
      boardsUsed: 19,
      stages: [
        { started: 160, boardsEach: 3, boards: 3 },
        { started: 144, boardsEach: 8, boards: 16 },
      ],
    };
    expect(both(['19', '7', '7', '72', '0.9', '14', '18', '1'])).toEqual([expected, expected]);
  });

  // Stages of a day on a weekly interval never stand at the same time.
  it('stages that never meet use the same boards by turns', () => {
    for (const { batch, boardsUsed, stages } of both(['5', '7', '1', '10', '1', '1', '10', '1'])) {
      expect([batch, boardsUsed]).toEqual([50, 5]);
      expect(stages.map(({ boards }) => boards)).toEqual([5, 5]);
    }
  });

  it('a stage of time 0 is skipped and has no load', () => {
    for (const { batch, stages } of both(['10', '7', '0', '99', '0.5', '14', '12', '1'])) {
      expect(batch).toBe(60);
      expect(stages[0]).toEqual({ started: 0, boardsEach: 0, boards: 0 });
    }
  });

  it.each<[claim: string, args: string[]]>([
    ['all times are 0', ['10', '7', '0', '12', '1']],
    ['the interval is 0', ['10', '0', '14', '12', '1']],
    ['a time is below 0', ['10', '7', '-1', '12', '1', '14', '12', '1']],
    ['a density is 0', ['10', '7', '14', '0', '1']],
    ['a survival is above 1', ['10', '7', '14', '12', '1.01']],
  ])('it is none where %s', (_claim, args) => {
    for (const { batch, boardsUsed } of both(args)) expect([batch, boardsUsed]).toEqual([NaN, NaN]);
  });
});

describe('numbers within the tolerance of a whole one count as that:', () => {
  it.each<[claim: string, args: string[], batch: number]>([
    ['boards a hair below', ['9.9999999999999', '7', '14', '12', '1'], 60],
    ['boards well below', ['9.9999', '7', '14', '12', '1'], 48],
    ['a stage a hair above two intervals', ['10', '7', '14.000000000000001', '12', '1'], 60],
    ['a stage well above two intervals', ['10', '7', '14.001', '12', '1'], 36],
    ['a density a hair below', ['10', '7', '14', '11.999999999999', '1'], 60],
    ['a survival a hair above a half', ['10', '7', '7', '12', '0.5000000000000001', '7', '6', '1'], 60],
  ])('%s', (_claim, args, batch) => {
    expect(both(args).map((result) => result.batch)).toEqual([batch, batch]);
  });
});

describe('as a formula', () => {
  const cells: Given = [
    ['boards_afloat', '10', 'board'],
    ['a_week', '1', 'week'],
    ['holes', '12', 'plant/board'],
    ['kept', '90', '%'],
  ];

  it.each<[formula: string, batch: number]>([
    ['whole_batch(boards_afloat, a_week / 3, a_week / 3, holes, 1)', 120],
    ['whole_batch(boards_afloat, a_week / 3, a_week / 3 + a_week / 3, holes, 1)', 60],
    ['whole_batch(boards_afloat, a_week / 7, a_week * 2 / 7, holes, 1)', 60],
    ['whole_batch(boards_afloat * 100000, a_week, 2 * a_week, holes, kept)', 6_000_000],
    ['whole_batch(boards_afloat, a_week, a_week, holes, kept, a_week, holes, 1)', 60],
  ])('%s is %d', (formula, batch) => {
    expect(exactly(formula, 'plant', cells)).toBe(String(batch));
    expect(floating(formula, 'plant', cells)).toBe(batch);
  });
});
