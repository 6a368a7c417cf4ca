import { describe, expect, it } from 'vitest';
import { dotRows, reachOf } from '../../../src/present/timing/dots';
import { only, study } from './trials';

describe('the dots of a step', () => {
  it('lie in per cent of its mean, as large as their batches', () => {
    const [row] = dotRows([only('10 110; 20 240; 10 130; 10 120')]);
    expect(row!.dots.map(({ off }) => Number(off.toFixed(6)))).toEqual([-8.333333, 0, 8.333333, 0]);
    expect(row!.dots.map(({ size }) => size)).toEqual([0.5, 1, 0.5, 0.5]);
  });

  // Half-width 1.2992 of 12.
  it('have half of the interval, none for one batch', () => {
    expect(dotRows([only('10 110; 10 120; 10 130; 10 120')])[0]!.half).toBeCloseTo(10.827, 3);
    expect(dotRows([only('60 756')])[0]!.half).toBeUndefined();
  });

  it('are left out for a step without a sound batch', () => {
    expect(dotRows(study('step,plants,seconds\na,1,x\nb,2,4\n')).map(({ step }) => step)).toEqual(['b']);
  });
});

describe('the picture reaches', () => {
  it('over all dots, the goal and the intervals', () => {
    const rows = dotRows([only('10 110; 10 120; 10 130; 10 120')]);
    expect(reachOf(rows, 5)).toBeCloseTo(10.827 * 1.08, 2);
    expect(reachOf(rows, 20)).toBeCloseTo(20 * 1.08, 6);
  });

  it('not over an interval so wide that nothing else could be seen', () => {
    // Dots 16.7 % off, an interval of ± 212 %.
    expect(reachOf(dotRows([only('10 100; 10 140')]), 5)).toBeCloseTo(16.6667 * 1.08, 3);
  });
});
