import type { Distribution } from './distribution';
import { randomStream, type RandomStream } from './rng';
import { SobolCoordinate, sobolDimensions } from './sobolSequence';

/** How the points of Sobol' indices are chosen; sampler and analysis use the same design. */
export interface SobolDesign {
  /** Base points in all, a power of two of at least twice the replicates. */
  readonly points: number;
  /** Point sets of equal size, each scrambled on its own; a power of two. */
  readonly replicates: number;
  readonly seed: number;
}

/** Random streams from this number on scramble points; those below it belong to the draws of cells. */
const firstScramble = 2 ** 40;

/**
 * The two matrices A and B of one replicate: the first and the last half of the coordinates of scrambled Sobol' points,
 * each turned into its input's quantile. Coordinates beyond the sequence's last are plain random numbers.
 */
export class SobolSampler {
  private readonly coordinates: readonly (SobolCoordinate | undefined)[];
  private readonly random: RandomStream;
  private readonly inputs: readonly Pick<Distribution, 'quantile'>[];

  constructor(inputs: readonly Pick<Distribution, 'quantile'>[], design: SobolDesign, replicate: number) {
    this.inputs = inputs;
    this.random = randomStream(design.seed, firstScramble + replicate);
    const bits = 31 - Math.clz32(design.points / design.replicates);
    this.coordinates = Array.from({ length: 2 * inputs.length }, (_, d) =>
      d < sobolDimensions ? new SobolCoordinate(d, bits, this.random) : undefined,
    );
  }

  /** Fills the next rows of A and B, one column for each input. */
  fill(a: readonly Float64Array[], b: readonly Float64Array[], count: number): void {
    [...a, ...b].forEach((column, d) => {
      const coordinate = this.coordinates[d];
      const input = this.inputs[d % this.inputs.length];
      if (coordinate === undefined) this.random.fill(column, count);
      else coordinate.fill(column, count, 0.5);
      for (let i = 0; i < count; i += 1) column[i] = input?.quantile(column[i] as number) ?? NaN;
    });
  }
}

const replicates = 16;
const fewestPoints = 2 ** 9;
const mostPoints = 2 ** 16;

/** A design with work in proportion to a number of draws. */
export function designFor(draws: number, seed: number): SobolDesign {
  let points = fewestPoints;
  while (points < mostPoints && points * 16 <= draws) points *= 2;
  return { points, replicates, seed };
}
