import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/informationValue.json';
import { InputInformation } from '../../src/study/informationValue';
import { normalQuantile } from '../../src/study/normal';
import { PerfectInformation, type Worth } from '../../src/study/perfectInformation';
import { randomStream } from '../../src/study/rng';

const block = 1000;

/** Within five standard errors, two-sided chance 6e-7, and the error is what the number of draws promises. */
function expectWorth({ value, error }: Worth, true_: number, largestError: number): void {
  expect(Math.abs(value - true_)).toBeLessThanOrEqual(5 * error);
  expect(error).toBeLessThan(largestError);
}

describe('value of perfect information, printed examples', () => {
  it.each(checks.tables)('$id: $worth', ({ tenths, payoffs, worth }) => {
    const all = new PerfectInformation(payoffs.length);
    // A state of n tenths stands for n draws of ten; those of quarters for n of twenty.
    const draws = tenths.flatMap((share, state) => Array<number>(share * 2).fill(state));
    const options = payoffs.map((payoff) => Float64Array.from(draws, (state) => payoff[state]!));
    all.add(options, draws.length);
    expect(all.worth().value).toBeCloseTo(worth, 9);
  });
});

/** Draws of a sum of independent normals, with what knowing all and each is worth. */
function normals(seed: number, draws: number, means: readonly number[], sds: readonly number[]) {
  const streams = means.map((_, k) => randomStream(seed, k));
  const chances = means.map(() => new Float64Array(block));
  const d = new Float64Array(block);
  const nothing = new Float64Array(block);
  const all = new PerfectInformation(2);
  const each = means.map(() => new InputInformation(draws, false));
  for (let done = 0; done < draws; done += block) {
    d.fill(0);
    streams.forEach((stream, k) => {
      stream.fill(chances[k]!, block);
      for (let i = 0; i < block; i += 1) d[i]! += means[k]! + sds[k]! * normalQuantile(chances[k]![i]!);
    });
    all.add([nothing, d], block);
    each.forEach((input, k) => input.add(chances[k]!, d, block));
  }
  return { all: all.worth(), each: each.map((input) => input.worth(all.best() === 1)) };
}

describe.each([0, 1, 2, 3])('on a million draws, seed %d', (seed) => {
  const draws = 1_000_000;

  it('E6, breakeven of a normal demand: K σ times the unit normal loss; the only input is worth all', () => {
    const { perUnit, breakeven, mean, sd, worth } = checks.breakeven;
    const found = normals(seed, draws, [perUnit * (mean - breakeven)], [perUnit * sd]);
    expectWorth(found.all, worth, 10);
    expectWorth(found.each[0]!, worth, 10);
  });

  it('E7, two parameters: all, and each', () => {
    const { means, sds, all, each } = checks.twoParameters;
    const found = normals(seed, draws, means, sds);
    expectWorth(found.all, all, 0.002);
    found.each.forEach((worth, k) => expectWorth(worth, each[k]!, 0.002));
    found.each.forEach(({ value }) => expect(value).toBeLessThanOrEqual(found.all.value));
  });

  it('a parameter that the difference does not depend on is worth nothing', () => {
    const found = normals(seed, draws, [0.001, 0], [1, 0]);
    expect(found.each[1]!.value).toBeLessThanOrEqual(5 * found.each[1]!.error);
    expect(found.each[1]!.value).toBeLessThan(0.002);
  });
});

describe('few draws do not make value out of noise', () => {
  it('E7 with an idle parameter: over 200 seeds of 1,000 draws the mean is not above the true worth', () => {
    const { means, sds, each } = checks.twoParameters;
    const runs = Array.from({ length: 200 }, (_, seed) => normals(seed, 1000, [...means, 0], [...sds, 0]).each);
    const meanOf = (k: number): number => runs.reduce((sum, run) => sum + run[k]!.value, 0) / runs.length;
    const errorOf = (k: number): number =>
      Math.sqrt(runs.reduce((sum, run) => sum + (run[k]!.value - meanOf(k)) ** 2, 0)) / runs.length;
    each.forEach((worth, k) => {
      expect(meanOf(k)).toBeLessThanOrEqual(worth + 4 * errorOf(k));
      expect(meanOf(k)).toBeGreaterThan(worth * 0.7);
    });
    expect(meanOf(2)).toBeLessThan(0.01);
  });
});
