import { sampleCorrelation, sampleRankCorrelation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../model/table';
import { drawn, drawsOf } from './ranges';

const count = 20_000;

/** The largest distance between the empirical distribution function and one that is given. */
function kolmogorov(values: Float64Array, below: (x: number) => number): number {
  const sorted = values.slice().sort();
  return sorted.reduce((most, x, i) => {
    const chance = below(x);
    return Math.max(most, chance - i / sorted.length, (i + 1) / sorted.length - chance);
  }, 0);
}

/** Exceeded by a right shape once in 100,000 samples (Kolmogorov's limit: 2 exp(-2 λ²) = 1e-5). */
const critical = Math.sqrt(-Math.log(1e-5 / 2) / 2) / Math.sqrt(count);

/** The normal distribution function by its series, for the middle that samples of this size reach. */
function normalBelow(z: number): number {
  if (Math.abs(z) > 7) return z < 0 ? 0 : 1;
  let sum = z;
  for (let n = 1, term = z; Math.abs(term) > 1e-17; n += 1) {
    term *= (z * z) / (2 * n + 1);
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}

/** The beta distribution function by the midpoint rule. */
function betaBelow(a: number, b: number): (x: number) => number {
  const steps = 20_000;
  const sums = [0];
  for (let k = 0; k < steps; k += 1) {
    const t = (k + 0.5) / steps;
    sums.push(sums[k]! + t ** (a - 1) * (1 - t) ** (b - 1));
  }
  return (x) => sums[Math.round(Math.min(Math.max(x, 0), 1) * steps)]! / sums[steps]!;
}

/** Distribution functions written by hand, for 2 to 7 with the value 3. */
const truths: Readonly<Record<string, (x: number) => number>> = {
  triangular: (x) => (x < 3 ? (x - 2) ** 2 / 5 : 1 - (7 - x) ** 2 / 20),
  pert: (x) => betaBelow18((x - 2) / 5),
  uniform: (x) => (x - 2) / 5,
  normal: (x) => normalBelow(((x - 4.5) / 2.5) * 1.6448536269514722),
  lognormal: (x) =>
    x <= 0 ? 0 : normalBelow((Math.log(x / Math.sqrt(14)) / Math.log(Math.sqrt(3.5))) * 1.6448536269514722),
};
const betaBelow18 = betaBelow(1.8, 4.2);
const text = (shape: string): string => `x: 3 | range: 2 7 ${shape}`;

describe.each(Object.keys(truths))('the sampler of %s', (shape) => {
  const [values] = drawn(text(shape), 1, count);

  it('draws its own shape (Kolmogorov and Smirnov)', () => {
    expect(kolmogorov(values!, truths[shape]!)).toBeLessThan(critical);
  });

  it.each(Object.keys(truths).filter((other) => other !== shape))('would be found out as %s', (other) => {
    expect(kolmogorov(values!, truths[other]!)).toBeGreaterThan(critical);
  });
});

describe('the sampler of either', () => {
  it('draws both ends, each half of the time', () => {
    const [values] = drawn('x: 2 | range: 2 7 either', 1, count);
    const lows = values!.filter((x) => x === 2).length;
    expect(values!.every((x) => x === 2 || x === 7)).toBe(true);
    expect(Math.abs(lows / count - 0.5)).toBeLessThan(4 * 0.5 * Math.sqrt(1 / count));
  });
});

describe('a wrong spread is found out at this size', () => {
  it.each([
    ['triangular with its mode a tenth of the range off', 'x: 3.5 | range: 2 7', 'triangular'],
    ['uniform a twentieth too wide', 'x: 3 | range: 1.875 7.125 uniform', 'uniform'],
    ['normal a twentieth too wide', 'x: 3 | range: 1.875 7.125 normal', 'normal'],
  ])('%s', (_claim, wrong, shape) => {
    expect(kolmogorov(drawn(wrong, 1, count)[0]!, truths[shape]!)).toBeGreaterThan(critical);
  });
});

describe('rank correlations', () => {
  /** Standard error of Spearman's coefficient, about 1/√n. */
  const error = 1 / Math.sqrt(count);
  const rank = (a: Float64Array, b: Float64Array): number => sampleRankCorrelation([...a], [...b]);

  it.each([0.9, 0.5, 0.1, -0.3, -0.95])('%d comes out, whatever the shapes', (wanted) => {
    const [a, b] = drawn(`x: 3 | range: 2 7 lognormal | correlation: y ${wanted}\ny: 3 | range: 2 7 pert`, 2, count);
    expect(Math.abs(rank(a!, b!) - wanted)).toBeLessThan(4 * error);
  });

  it('of three inputs come out pair by pair, and a fourth stays on its own', () => {
    const [a, b, c, d] = drawn(
      'a: 3 | range: 2 7 | correlation: b 0.6; c -0.4\nb: 3 | range: 2 7 uniform\n' +
        'c: 3 | range: 2 7 normal | correlation: b -0.2\nd: 3 | range: 2 7',
      3,
      count,
    );
    const found = [rank(a!, b!), rank(a!, c!), rank(b!, c!), rank(a!, d!), rank(b!, d!), rank(c!, d!)];
    [0.6, -0.4, -0.2, 0, 0, 0].forEach((wanted, i) => {
      expect(Math.abs(found[i]! - wanted)).toBeLessThan(4 * error);
    });
  });

  it('leave the shapes as they are', () => {
    const [a, b] = drawn('a: 3 | range: 2 7 | correlation: b 0.8\nb: 3 | range: 2 7 normal', 4, count);
    expect(kolmogorov(a!, truths['triangular']!)).toBeLessThan(critical);
    expect(kolmogorov(b!, truths['normal']!)).toBeLessThan(critical);
  });

  it('keep to the copula: two normals get 2 sin(πρ/6) (Pearson 1907)', () => {
    const [a, b] = drawn('a: 3 | range: 2 7 normal | correlation: b 0.5\nb: 3 | range: 2 7 normal', 5, count);
    const wanted = 2 * Math.sin(Math.PI / 12);
    expect(Math.abs(sampleCorrelation([...a!], [...b!]) - wanted)).toBeLessThan(4 * error);
  });
});

describe('draws', () => {
  const two = 'x: 3 | range: 2 7\ny: 3 | range: 2 7';

  it.each([0, 1, 99])('repeat with their seed: %d', (seed) => {
    expect(drawn(two, seed, 700)).toEqual(drawn(two, seed, 700));
  });

  it('differ with their seed', () => expect(drawn(two, 0, 5)).not.toEqual(drawn(two, 1, 5)));

  it('of more begin like those of fewer', () => {
    expect(drawn(two, 1, 1500).map((column) => column.slice(0, 600))).toEqual(drawn(two, 1, 600));
  });

  it('of an input do not depend on which others are drawn', () => {
    const [alone] = drawn('x: 3\ny: 3 | range: 2 7', 1, 5);
    expect(alone).toEqual(drawn(two, 1, 5)[1]);
  });

  it('count shares that lie outside 0 to 100 %', () => {
    const { inputs, draws } = drawsOf('a [%]: 97 | range: 95 99.5 normal\nb: 97 | range: 95 99.5 normal', 1, 512);
    const columns = inputs.map(() => new Float64Array(512));
    let above = 0;
    for (let turn = 0; turn < 20; turn += 1) {
      draws.fill(columns, 512);
      above += columns[0]!.filter((x) => x > 100).length;
    }
    expect(above).toBeGreaterThan(0);
    expect([...draws.outside]).toEqual([above, 0]);
  });

  it('of correlated inputs that the model has no factor for are independent', () => {
    const text =
      'a: 3 | range: 2 7 | correlation: b 0.99; c 0.99\nb: 3 | range: 2 7 | correlation: c -0.99\nc: 3 | range: 2 7';
    expect(modelOf(text).faults.map(({ code }) => code)).toEqual(['correlation-impossible']);
    const [a, b] = drawn(text, 1, 2000);
    expect(Math.abs(sampleCorrelation([...a!], [...b!]))).toBeLessThan(0.1);
  });
});
