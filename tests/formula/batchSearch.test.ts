import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';
import { BatchSearch, lastThat, runningStages, tooLarge } from '../../src/formula/batchSearch';
import { largestBatch } from '../../src/formula/wholeBatch';
import { uniforms } from '../study/uniforms';
import { boxed } from './boxed';

describe('stages that take time', () => {
  it.each<[claim: string, args: number[], running: number[]]>([
    ['one', [10, 7, 14, 12, 1], [2]],
    ['all but those of time 0, whatever else these hold', [10, 7, 0, -1, 9, 14, 12, 1], [5]],
    ['none where all times are 0', [10, 7, 0, 12, 1], []],
    ['none with a time below 0', [10, 7, 14, 12, 1, -1, 12, 1], []],
    ['none with a density of 0', [10, 7, 14, 0, 1], []],
    ['none with a survival above 1', [10, 7, 14, 12, 1.01], []],
    ['none without an interval', [10, 0, 14, 12, 1], []],
    ['none where the boards are not known', [NaN, 7, 14, 12, 1], []],
  ])('are %s', (_claim, args, running) => {
    const places: number[] = [];
    const count = runningStages(args, places);
    expect(places.slice(0, count)).toEqual(running);
  });
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

/** The batch that the search over any arithmetic finds, on the same float64 numbers. */
function general(args: readonly number[]): number {
  return largestBatch(
    boxed,
    args.map((x) => ({ x })),
  ).x;
}

describe('the search in float64', () => {
  it('agrees with the one over any arithmetic, bit for bit', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(schedules, (args) => {
        expect(largestBatch(float, args)).toBe(general(args));
      }),
      { numRuns: 4000, seed: 1 },
    );
  });

  it('is what the exact search finds as well, where no number is near a tie', { timeout: 60_000 }, () => {
    const rounded = schedules.map((args) => args.map((x) => Number(x.toPrecision(3))));
    fc.assert(
      fc.property(rounded, (args) => {
        const batch = largestBatch(
          exact,
          args.map((x) => exact.read(String(x))),
        );
        expect(largestBatch(float, args)).toBe(exact.toNumber(batch));
      }),
      { numRuns: 1000, seed: 1 },
    );
  });

  it.each<[claim: string, args: number[], batch: number]>([
    ['a stage that is a multiple of the interval', [10, 7, 14, 12, 1], 60],
    ['nothing fits', [1, 7, 14, 12, 1], 0],
    ['fewer boards than none', [-5, 7, 14, 12, 1, 7, 12, 1], 0],
    ['a stage that all is lost in', [10, 7, 7, 12, 0, 7, 12, 1], 120],
    ['no stage has any time', [10, 7, 0, 12, 1], NaN],
    ['a survival above 100 %', [10, 7, 14, 12, 1.5], NaN],
    ['batches that are left to the general search', [2 ** 60, 1, 1, 1000, 1], Infinity],
  ])('%s', (_claim, args, batch) => expect(new BatchSearch().largest(args)).toBe(batch));

  // Boards for which rounding leads the steps too low: constants of the search over any arithmetic.
  it.each<[claim: string, args: number[], batch: number]>([
    ['two stages', [7085543178449.768, 6.5, 8, 0.1, 0.32, 5, 0.1, 0], 354277158922],
    ['two, by many steps', [11058555932712.938, 7, 19, 140, 1, 14.000000000027999, 0.1, 1], 552336008056],
    [
      'four',
      [
        ...[94838450282, 2.5, 7, 33, 0, 17.681132981088012, 1 / 3, 1, 19, 0.9784781871602828, 0],
        ...[7.0000000000139995, 1.790543987415731, 1.3613361367343692e-11],
      ],
      1043222953081,
    ],
  ])('climbs back up where it went too low: %s', (_claim, args, batch) => {
    expect(largestBatch(float, args)).toBe(batch);
    expect(general(args)).toBe(batch);
  });

  it('takes a schedule of 1,200 stages in its stride', { timeout: 20_000 }, () => {
    const args = [1e6, 1, ...Array.from({ length: 1200 }, () => [1, 10, 1]).flat()];
    expect(new BatchSearch().largest(args)).toBe(8330);
  });

  it('holds nothing from a schedule of more stages to one of fewer', () => {
    const search = new BatchSearch();
    search.largest([900, 2, 5, 60, 0.9, 7, 30, 0.9, 10, 15, 0.9]);
    expect(search.largest([10, 7, 14, 12, 1])).toBe(60);
  });

  it.each<[claim: string, args: number[]]>([
    ['from a batch of 2^40 on', [2 ** 41, 7, 14, 12, 0.975, 7, 6, 1]],
    ['where nothing bounds the batch', [1e300, 7, 14, 12, 1]],
    ['where boards are too many to count', [2048, 8.6e-17, 28.8, 173, 0.5, 29, 3.97e-299, 0]],
  ])('agrees with the general search %s', (_claim, args) => {
    expect(largestBatch(float, args)).toBe(general(args));
  });

  it('gives no batch where nothing bounds it', () => {
    expect(largestBatch(float, [1e300, 7, 14, 12, 1])).toBeNaN();
  });

  // n boards for a day in seven, beside 100 batches on ceil(n/1000) boards each: 4,500 + 500 fill the 5,000.
  it.each([
    ['two stages', [5000, 7, 1, 1, 1, 700, 1000, 1], 4500],
    ['three', [5000, 7, 1, 1, 1, 350, 1000, 1, 350, 1000, 1], 4500],
  ])(
    'finds its way where a stage saves a board with each plant and others with a thousand: %s',
    (_claim, args, batch) => expect(largestBatch(float, args)).toBe(batch),
  );
});

type Drawn = (random: () => number) => number;

/** Arguments of one kind: boards, interval, then time, density and survival of a stage. */
interface Kind {
  readonly boards: Drawn;
  readonly interval: Drawn;
  readonly stage: readonly [time: Drawn, density: Drawn, survival: Drawn];
}

const halves =
  (most: number): Drawn =>
  (random) =>
    Math.round(random() * most * 2) / 2;
const whole =
  (most: number): Drawn =>
  (random) =>
    Math.ceil(random() * most);
const any =
  (from: number, to: number): Drawn =>
  (random) =>
    from + random() * (to - from);
const mostly =
  (usual: Drawn, rare: number): Drawn =>
  (random) =>
    random() < 0.1 ? rare : usual(random);

const kinds: readonly (readonly [claim: string, kind: Kind])[] = [
  [
    'round numbers, which meet boards and intervals exactly',
    { boards: whole(900), interval: halves(3), stage: [mostly(halves(20), 0), whole(80), mostly(any(0.8, 1), 1)] },
  ],
  [
    'rough numbers',
    { boards: whole(900), interval: any(0, 5), stage: [mostly(any(0, 30), 0), any(0.5, 90), any(0.5, 1)] },
  ],
  [
    'few boards, thin stages and stages that all is lost in',
    { boards: any(0, 40), interval: any(0.1, 9), stage: [any(0, 30), any(0.1, 3), mostly(any(0.6, 1), 0)] },
  ],
  [
    'faulty ones among them',
    {
      boards: mostly(whole(50), NaN),
      interval: mostly(any(0, 5), 0),
      stage: [mostly(any(0, 9), -1), mostly(any(1, 9), 0), any(0.5, 1.2)],
    },
  ],
];

describe.each(kinds)('the search in float64 agrees with the one over any arithmetic: %s', (_claim, kind) => {
  it.each([1, 2, 3, 4])('%d stages', { timeout: 60_000 }, (count) => {
    const random = uniforms(count);
    const drawns = [kind.boards, kind.interval, ...Array.from({ length: count }, () => kind.stage).flat()];
    const met = new Set<number>();
    for (let turn = 0; turn < 2000; turn += 1) {
      const args = drawns.map((drawn) => drawn(random));
      const batch = largestBatch(float, args);
      expect([args, batch]).toEqual([args, general(args)]);
      met.add(batch);
    }
    expect(met.size).toBeGreaterThan(10);
  });
});
