import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../src/core/number';
import { ratedSeconds, standardTime, timeStudy } from '../../src/trade/timeStudy';
import { batchesOf, single, spread, study, usualTerms, type Timed } from './timed';

const rows = (timed: readonly Timed[]) => timed.map(([x, y, r = 100]) => [x, Number(y) * (r / 100)] as const);
const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
const ratioOf = (pairs: readonly (readonly [number, number])[]): number =>
  total(pairs.map(([, y]) => y)) / total(pairs.map(([x]) => x));

/** Unequal batches in which the large ones are quicker for each plant. */
const unequal: Timed[] = [
  [10, 200],
  [20, 300],
  [40, 480],
  [50, 500, 110],
  [30, 420, 90],
];

describe('seconds per plant', () => {
  it('are all seconds over all plants, each plant counting alike', () => {
    expect(
      study([
        [10, 200],
        [90, 900],
      ]).secondsPerPlant.toString(),
    ).toBe('11');
  });

  it('are not the mean of the batches’ own, which is 15 here', () => {
    expect(
      study([
        [10, 200],
        [90, 900],
      ]).secondsPerPlant.toString(),
    ).not.toBe('15');
  });

  it.each([
    ['a quick worker’s 110 % lengthens', 110, '11'],
    ['a slow worker’s 90 % shortens', 90, '9'],
  ])('%s what was timed, so that it is of a normal pace', (_, rating, seconds) => {
    expect(study([[10, 100, rating]]).secondsPerPlant.toString()).toBe(seconds);
  });

  it('rate each batch by itself, before they are summed', () => {
    expect(
      study([
        [10, 100, 120],
        [30, 300, 80],
      ]).secondsPerPlant.toString(),
    ).toBe('9');
  });

  it('are exact in decimals', () => {
    expect(
      study([
        [1, '0.1'],
        [1, '0.2'],
      ]).secondsPerPlant.toString(),
    ).toBe('0.15');
    expect(ratedSeconds(batchesOf([[1, '1.1', 110]])[0]!).toString()).toBe('1.21');
  });
});

describe('a study', () => {
  it('has an entry a step, in the order in which they first come, each of its own batches', () => {
    const [a, b] = [
      batchesOf(
        [
          [10, 100],
          [10, 120],
        ],
        'washing',
      ),
      batchesOf([[5, 40]], 'moving'),
    ];
    const entries = timeStudy([a[0]!, b[0]!, a[1]!], usualTerms);
    expect(entries.map(({ step, batches, plants }) => [step, batches, plants.toString()])).toEqual([
      ['washing', 2, '20'],
      ['moving', 1, '5'],
    ]);
    expect(entries[0]).toEqual(timeStudy(a, usualTerms)[0]);
  });

  it('is empty without batches', () => expect(timeStudy([], usualTerms)).toEqual([]));

  it('takes a step named as an object’s own part for a step', () => {
    expect(timeStudy(batchesOf([[1, 2]], '__proto__'), usualTerms)[0]?.step).toBe('__proto__');
  });

  it('says nothing of the spread of a single batch', () => {
    expect(study([[10, 100]]).spread).toBeUndefined();
    expect(study([[10, 100]]).standardTime.toString()).toBe('11.5');
  });
});

describe('the standard deviation', () => {
  it('divides by n − 1: √2 and not 1 for two batches of 9 and 11 seconds a plant', () => {
    expect(
      spread([
        [10, 90],
        [10, 110],
      ]).sd.toString(),
    ).toBe(decimal(2).sqrt().toString());
  });

  it('is of the batches’ own seconds per plant, each batch counting alike', () => {
    expect(
      spread([
        [10, 90],
        [500, 5500],
      ])
        .sd.minus(decimal(2).sqrt())
        .abs()
        .toNumber(),
    ).toBeLessThan(1e-32);
  });

  it('is of rated seconds', () => {
    expect(
      spread([
        [10, 100, 90],
        [10, 100, 110],
      ]).sd.toString(),
    ).toBe(decimal(2).sqrt().toString());
  });
});

describe('the standard error', () => {
  const close = (a: Decimal, b: Decimal): number => a.div(b).minus(1).abs().toNumber();

  it('is sd/√n where all batches have equal numbers of plants', () => {
    for (const seconds of [
      [90, 110],
      [84, 97.5, 120, 101],
      [1, 2, 3, 4, 5, 6.25, 1000],
    ]) {
      const { sd, standardError } = spread(seconds.map((each) => [12, each]));
      expect(close(standardError, sd.div(decimal(seconds.length).sqrt()))).toBeLessThan(1e-31);
    }
  });

  it('is not sd/√n where they are unequal', () => {
    const { sd, standardError } = spread(unequal);
    expect(close(standardError, sd.div(decimal(5).sqrt()))).toBeGreaterThan(0.1);
  });

  const timed: fc.Arbitrary<[number, number, number][]> = fc.array(
    fc.tuple(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 60, max: 140 })),
    { minLength: 2, maxLength: 12 },
  );

  it('is the textbook’s Σ(y − R x)² / (n (n − 1) x̄²), in exact fractions', () => {
    fc.assert(
      fc.property(timed, (each) => {
        const x = each.map(([plants]) => new Fraction(plants));
        const y = each.map(([, seconds, rating]) => new Fraction(seconds).mul(rating).div(100));
        const sum = (values: Fraction[]): Fraction => values.reduce((all, value) => all.add(value), new Fraction(0));
        const [n, ratio] = [each.length, sum(y).div(sum(x))];
        const left = sum(y.map((seconds, i) => seconds.sub(ratio.mul(x[i]!)).pow(2)));
        const squared = left.div(n * (n - 1)).div(sum(x).div(n).pow(2));
        const ours = spread(each).standardError.pow(2);
        const exact = decimal(squared.n.toString()).div(squared.d.toString());
        expect(ours.minus(exact).abs().lte(exact.times('1e-31'))).toBe(true);
      }),
    );
  });

  // Leaving out one batch after the other is another road to the same figure, not the same formula (Quenouille, Tukey).
  it('is near the jackknife’s', () => {
    const many: Timed[] = [
      [40, 480],
      [45, 600],
      [38, 437],
      [52, 640],
      [47, 530],
      [41, 520],
      [50, 615],
      [44, 500],
    ];
    const pairs = rows(many);
    const without = pairs.map((_, i) => ratioOf(pairs.filter((_pair, j) => j !== i)));
    const mean = total(without) / without.length;
    const n = pairs.length;
    const jackknife = Math.sqrt((total(without.map((ratio) => (ratio - mean) ** 2)) * (n - 1)) / n);
    const ours = spread(many).standardError.toNumber();
    expect(Math.abs(ours / jackknife - 1)).toBeLessThan(0.02);
    expect(Math.abs(ours / jackknife - 1)).toBeGreaterThan(0);
  });
});

describe('the interval', () => {
  it('reaches t standard errors to either side, with n − 1 degrees of freedom', () => {
    const { secondsPerPlant, spread: found } = study(unequal);
    const [from, to] = found!.interval;
    const half = found!.standardError.times('2.7764451051977943');
    expect(to.minus(secondsPerPlant).div(half).minus(1).abs().toNumber()).toBeLessThan(1e-14);
    expect(secondsPerPlant.minus(from).minus(to.minus(secondsPerPlant)).abs().toNumber()).toBeLessThan(1e-30);
  });

  it('is not z standard errors, which five batches do not warrant', () => {
    const { interval, standardError } = spread(unequal);
    expect(interval[1].minus(interval[0]).div(standardError).toNumber()).toBeGreaterThan(2 * 1.96 * 1.4);
  });
});

describe('batches needed', () => {
  const needed = (timed: readonly Timed[], within = 5): string =>
    spread(timed, { within: decimal(within) }).batchesNeeded.toString();

  it('are rounded up: 15.37 batches are 16', () => expect(needed(single(9, 10, 11))).toBe('16'));

  it('do not hang on how many were timed, only on how far they lie apart', () => {
    for (const seconds of [
      [9, 10, 11],
      [9, 9, 10, 11, 11],
    ]) {
      expect(spread(single(...seconds)).sd.toString()).toBe('1');
      expect(needed(single(...seconds))).toBe('16');
    }
  });

  it('are four times as many for half the distance', () => {
    const [wide, close] = [10, 5].map((within) => Number(needed(single(5, 10, 15), within)));
    expect([wide, close]).toEqual([97, 385]);
  });

  it('are in all: fewer than there are where those lie close', () => {
    expect(needed(single(9.9, 10, 10.1, 10, 10, 10))).toBe('1');
  });
});

describe('batches that agree', () => {
  const agreeing: Timed[] = [
    [3, 10],
    [6, 20],
    [21, 70],
    [9, 30],
    [12, 40],
    [33, 110],
    [3, 10],
  ];

  it('have no spread at all, though their seconds per plant have no end', () => {
    const { secondsPerPlant, spread: found } = study(agreeing);
    expect(found!.sd.toString()).toBe('0');
    expect(found!.standardError.toString()).toBe('0');
    expect(found!.interval.map(String)).toEqual([secondsPerPlant.toString(), secondsPerPlant.toString()]);
  });

  it('ask for no batch more: 0, as the formula says, and not 1 from a rounded third', () => {
    expect(spread(agreeing).batchesNeeded.toString()).toBe('0');
  });
});

describe('the standard time', () => {
  it.each([
    ['job', 15, '11.5'],
    ['day', 20, '12.5'],
    ['job', 0, '10'],
    ['day', 0, '10'],
    ['job', 120, '22'],
  ] as const)('of 10 s with an allowance of the %s of %d %% is %s s', (allowanceOf, allowance, expected) => {
    expect(standardTime(decimal(10), { allowance: decimal(allowance), allowanceOf }).toString()).toBe(expected);
  });

  it('has the rating in it already, once', () => {
    expect(study([[10, 100, 120]]).standardTime.toString()).toBe('13.8');
  });

  it('differs between the two shares: 15 % of the day is 17.6 % of the job', () => {
    const [job, day] = (['job', 'day'] as const).map((allowanceOf) => study([[1, 100]], { allowanceOf }).standardTime);
    expect([job!.toFixed(2), day!.toFixed(2)]).toEqual(['115.00', '117.65']);
  });
});
