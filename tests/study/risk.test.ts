import { describe, expect, it } from 'vitest';
import { quantile } from '../../src/study/quantile';
import { drawRisk, type RiskProgress } from '../../src/study/risk';
import { risky, riskOf } from './risky';

/** Whether a mean lies within four of its standard errors. */
function isNear(mean: number, wanted: number, sd: number, draws: number): boolean {
  return Math.abs(mean - wanted) <= (4 * sd) / Math.sqrt(draws);
}

describe('draws', () => {
  const draws = 40_000;

  it('of a sum have its mean and spread', () => {
    const { moments, sorted, failed } = riskOf('a: 2 * x + y\nx: 3 | range: 0 6 uniform\ny: 1 | range: 0 2', { draws });
    const sd = Math.sqrt(4 * 3 + 1 / 6);
    expect([sorted.length, failed]).toEqual([draws, 0]);
    expect(isNear(moments.mean, 7, sd, draws)).toBe(true);
    expect(Math.abs(moments.sd / sd - 1)).toBeLessThan(4 * Math.sqrt(1 / (2 * draws)));
  });

  it('come sorted, so that percentiles can be read off', () => {
    const { sorted } = riskOf('a: x\nx: 0.5 | range: 0 1 uniform', { draws });
    expect(sorted.every((x, i) => i === 0 || x >= sorted[i - 1]!)).toBe(true);
    for (const share of [0.05, 0.5, 0.95]) {
      expect(Math.abs(quantile(sorted, share) - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / draws));
    }
  });

  it('of two plans are common: a shared input that adds the same to both does not spread the difference', () => {
    const text = 'a: x + y\nx: 1 | range: 0 100 uniform\ny: 0 | in Today: 1 | in Other: 3';
    const { sorted, moments } = riskOf(text, { draws: 1000 }, true);
    expect(moments.mean).toBeCloseTo(2, 12);
    expect(sorted.at(-1)! - sorted[0]!).toBeLessThan(1e-13);
  });

  it('vary an input that only the plan compared with takes from its range', () => {
    const text = 'a: x\nx: 5 | range: 0 10 uniform | in Today: | in Other: 7';
    const { moments } = riskOf(text, { draws }, true);
    expect(isNear(moments.mean, 2, 10 / Math.sqrt(12), draws)).toBe(true);
  });

  it('take rank correlations in', () => {
    const sum = (rank: number): number =>
      riskOf(`a: x + y\nx: 3 | range: 2 7 normal | correlation: y ${rank}\ny: 3 | range: 2 7 normal`, { draws }).moments
        .sd;
    expect(sum(0.9)).toBeGreaterThan(1.9 * (5 / 3.289707) * 0.98);
    expect(sum(-0.9)).toBeLessThan(0.5 * (5 / 3.289707));
  });

  it.each([0, 1, 12345])('repeat with their seed, bit for bit: %d', (seed) => {
    const text = 'a: x / y\nx: 3 | range: 2 7 pert\ny: 3 | range: 2 7 lognormal';
    expect(riskOf(text, { seed })).toEqual(riskOf(text, { seed }));
  });

  it('are the same on every machine: every shape, powers and logarithms', () => {
    const text =
      'a: log(p) + t ^ 0.7 + exp(n / 10) * u + e / l + capital_recovery(t / 100, p)\n' +
      'p: 3 | range: 2 7 pert | correlation: n 0.5\nn: 3 | range: 2 7 normal\nt: 3 | range: 2 7\n' +
      'u: 3 | range: 2 7 uniform\ne: 2 | range: 2 7 either\nl: 3 | range: 2 7 lognormal';
    const { sorted, moments } = riskOf(text, { seed: 0, draws: 1001 });
    expect([sorted[0], sorted[500], sorted[1000], moments.mean, moments.sd]).toEqual([
      6.745474991377009, 12.433891485910856, 22.26081258745636, 12.61380337224696, 2.863433427879576,
    ]);
  });
});

describe('what cannot be computed', () => {
  it('is left out, counted, and explained by the cell and the input that do it', () => {
    const { sorted, failed, failures, draws } = riskOf(
      'a: b + y\nb: sqrt(x)\nx: 1 | range: -1 3 uniform\ny: 1 | range: 0 2',
    );
    expect(sorted.length + failed).toBe(draws);
    expect(Math.abs(failed / draws - 0.25)).toBeLessThan((4 * Math.sqrt(0.25 * 0.75)) / 100);
    expect(
      failures.map(({ cell, code, share, inputs }) => [
        cell.name,
        code,
        share,
        inputs.map(({ cell: { name } }) => name),
      ]),
    ).toEqual([['b', 'domain', 1, ['x']]]);
  });

  it('in every draw leaves nothing but the reason', () => {
    const { sorted, failed, moments, knowingAll, failures } = riskOf('a: x / z\nz: 0\nx: 1 | range: 0 2', {
      draws: 100,
    });
    expect([sorted.length, failed]).toEqual([0, 100]);
    expect([moments.mean, moments.sd, knowingAll.value]).toEqual([NaN, NaN, NaN]);
    expect(failures.map(({ message, share }) => [message, share])).toEqual([['division by 0', 1]]);
  });

  it('in one of two plans fails the draw', () => {
    const text = 'a: y\nx: 1 | range: -1 1 uniform\ny: 0 | in Today: 1 / max(x, 0) | in Other: x';
    const { failed, failures } = riskOf(text, {}, true);
    expect(Math.abs(failed - 5000)).toBeLessThan(200);
    expect(failures[0]!.cell.name).toBe('y');
  });

  it('as a share is counted where it lies outside 0 to 100 %', () => {
    const { outside } = riskOf('a: x * 1\nx [%]: 97 | range: 95 99.5 normal');
    expect(outside.map(({ lever, count }) => [lever.cell.name, count > 0])).toEqual([['x', true]]);
  });
});

describe('at the edges', () => {
  it('one draw has a mean and no spread', () => {
    const { sorted, moments } = riskOf('a: x\nx: 3 | range: 2 7', { draws: 1 });
    expect([sorted.length, moments.mean, moments.sd]).toEqual([1, sorted[0], NaN]);
  });

  it('no uncertain input gives the number of today', () => {
    const { moments, sorted, knowingAll, knowingEach } = riskOf('a: x * 2\nx: 3', { draws: 50 });
    expect([moments.mean, moments.sd, sorted.length, knowingAll.value, knowingEach]).toEqual([6, 0, 50, 0, []]);
  });

  it('an input that the result does not depend on is not drawn', () => {
    expect(
      riskOf('a: x\nx: 3 | range: 2 7\ny: 3 | range: 2 7').knowingEach.map(({ lever }) => lever.cell.name),
    ).toEqual(['x']);
  });

  it('a range whose ends are equal is certain', () => {
    expect(riskOf('a: x\nx: 3 | range: 3 3').moments).toEqual({ mean: 3, sd: 0 });
  });

  it('a check of plans: draws in more than one block', () => {
    expect(riskOf('a: x\nx: 3 | range: 2 7', { draws: 1025 }).sorted.length).toBe(1025);
  });
});

describe('the worth of knowing', () => {
  const draws = 40_000;

  it('turns at the target: d = result - target', () => {
    const text = 'a: x\nx: 15 | range: 10 20 uniform';
    const { knowingAll, knowingEach } = riskOf(text, { draws, target: 14 });
    // E[max(0, d)] - E[d] for d even on -4..6: ∫ of -d over -4..0 by tenths.
    expect(Math.abs(knowingAll.value - 0.8)).toBeLessThan(4 * knowingAll.error);
    expect(Math.abs(knowingEach[0]!.value - 0.8)).toBeLessThan(4 * knowingEach[0]!.error);
  });

  it('is nothing where the choice cannot turn', () => {
    const { knowingAll, knowingEach } = riskOf('a: x + y\nx: 3 | range: 2 7\ny: 3 | range: 2 7', { draws });
    expect([knowingAll.value, ...knowingEach.map(({ value }) => value)]).toEqual([0, 0, 0]);
  });

  it.each([0, 1, 2, 3, 4])('of one input is never negative and never above that of all, seed %d', (seed) => {
    const text = 'a: x * y - z\nx: 3 | range: 2 7\ny: 3 | range: 2 7 either\nz: 14 | range: 2 40 normal\nw: 1';
    const { knowingAll, knowingEach } = riskOf(text, { draws: 500, seed });
    for (const { value } of knowingEach) expect([value >= 0, value <= knowingAll.value]).toEqual([true, true]);
  });
});

describe('on the way', () => {
  it('says how far it has come and shows what there is so far', () => {
    const steps = [...drawRisk(risky('a: x\nx: 3 | range: 2 7'), { draws: 20_000, seed: 1, target: 0 })];
    expect(steps.length).toBeGreaterThan(2);
    expect(steps.map(({ result, done }: RiskProgress) => result.length === done)).not.toContain(false);
    expect(steps.every(({ of }) => of === 20_000)).toBe(true);
  });

  it('stops when it is told to', () => {
    const steps = drawRisk(risky('a: x\nx: 3 | range: 2 7'), { draws: 10_000_000, seed: 1, target: 0 });
    expect(steps.next().done).toBe(false);
    steps.return({} as never);
    expect(steps.next().done).toBe(true);
  });
});
