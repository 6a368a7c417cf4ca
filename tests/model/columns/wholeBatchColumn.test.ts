import { describe, expect, it } from 'vitest';
import { float } from '../../../src/core/float';
import { largestBatch } from '../../../src/formula/wholeBatch';
import { WholeBatchColumn } from '../../../src/model/columns/wholeBatchColumn';
import { randomStream } from '../../../src/study/rng';

const block = 512;

function uniforms(seed: number): () => number {
  const stream = randomStream(seed, 0);
  const one = new Float64Array(1);
  return () => {
    stream.fill(one, 1);
    return one[0]!;
  };
}

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

describe.each(kinds)('whole_batch down a column is the function, bit for bit: %s', (_claim, kind) => {
  it.each([1, 2, 3, 4])('%d stages', (stages) => {
    const random = uniforms(stages);
    const drawns = [kind.boards, kind.interval, ...Array.from({ length: stages }, () => kind.stage).flat()];
    const columns = drawns.map(() => new Float64Array(block));
    const batches = new WholeBatchColumn(columns);
    const out = new Float64Array(block);
    const met = new Set<number>();
    for (let turn = 0; turn < 8; turn += 1) {
      columns.forEach((column, k) => column.forEach((_, i) => (column[i] = drawns[k]!(random))));
      batches.fill(out, block);
      const args = Array.from(out, (_, i) => columns.map((column) => column[i]!));
      expect([...out]).toEqual(args.map((one) => largestBatch(float, one)));
      out.forEach((batch) => met.add(batch));
    }
    expect(met.size).toBeGreaterThan(10);
  });
});

describe('whole_batch down a column', () => {
  const fill = (...args: number[]): number => {
    const out = new Float64Array(4);
    new WholeBatchColumn(args.map((arg) => new Float64Array(4).fill(arg))).fill(out, 4);
    return out[3]!;
  };

  it.each<[claim: string, args: number[], batch: number]>([
    ['one stage that is a multiple of the interval', [10, 7, 14, 12, 1], 60],
    ['nothing fits', [1, 7, 14, 12, 1], 0],
    ['a stage of time 0 is skipped', [10, 7, 0, 1, 0, 14, 12, 1], 60],
    ['an argument of a skipped stage that is not known', [10, 7, 0, NaN, 1, 14, 12, 1], NaN],
    ['no stage has any time', [10, 7, 0, 12, 1], NaN],
    ['a survival above 100 %', [10, 7, 14, 12, 1.5], NaN],
    ['no bound: batches too large to count', [2 ** 60, 1, 1, 1000, 1], NaN],
  ])('%s', (_claim, args, batch) => expect(fill(...args)).toBe(batch));
});
