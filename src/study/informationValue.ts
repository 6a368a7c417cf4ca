import { orthogonalFit } from './orthogonalFit';
import { meanWorth, type Worth } from './perfectInformation';

const mostBins = 128;
const drawsPerBin = 64;
const degrees = 8;

/** Results summed up by the chance at which an input was drawn, in bins of equal chance. */
class Half {
  readonly counts: Float64Array;
  readonly sums: Float64Array;
  readonly squares: Float64Array;

  constructor(readonly bins: number) {
    this.counts = new Float64Array(bins);
    this.sums = new Float64Array(bins);
    this.squares = new Float64Array(bins);
  }

  /** For each bin, whether the result's expectation there is estimated to be above 0. */
  goesAhead(): boolean[] {
    const { bins, counts, sums, squares } = this;
    const means = sums.map((sum, bin) => (counts[bin]! > 0 ? sum / counts[bin]! : 0));
    const within = squares.reduce((sum, square, bin) => sum + square - means[bin]! * sums[bin]!, 0);
    const freedom = counts.reduce((sum, count) => sum + count, 0) - counts.filter((count) => count > 0).length;
    const places = Float64Array.from(means, (_, bin) => (2 * bin + 1) / bins - 1);
    const noise = freedom > 0 ? within / freedom : 0;
    return Array.from(orthogonalFit(places, means, counts, noise, degrees), (height) => height > 0);
  }
}

/**
 * What it is worth to know one input before choosing to go ahead or not, E[max(0, E[d | input])] - max(0, E[d]), from
 * draws of d with the chances at which the input was drawn. No nested draws are made: they would bias it upwards.
 *
 * The draws fall into two halves. On one, d is regressed on the input's chance (a polynomial through the means of 128
 * bins, its degree by Mallows' Cp; after Strong, Oakley & Brennan, Medical Decision Making 34 (2014) 311-326). The
 * regression says for which values of the input to go ahead; the gain of that rule is measured on the other half. Then
 * the halves change places. So noise in the regression is not counted as value: the estimate errs low, by what an
 * imperfect rule loses, and an input that cannot change the choice gets 0 within its error. It is never negative and
 * never above the value of knowing everything from the same draws. Inputs may be correlated: the value then includes
 * what this input tells about the others.
 */
export class InputInformation {
  private readonly halves: readonly [Half, Half];

  /**
   * @param draws how many will be added in all
   * @param twoValued whether the input takes one value below the median chance and another above it
   */
  constructor(draws: number, twoValued: boolean) {
    const bins = twoValued ? 2 : Math.max(2, Math.min(mostBins, Math.floor(draws / drawsPerBin)));
    this.halves = [new Half(bins), new Half(bins)];
  }

  /** Adds draws; those with an unknown result are left out. Every other draw goes to the second half. */
  add(chances: Float64Array, results: Float64Array, count: number): void {
    for (let parity = 0; parity < 2; parity += 1) {
      const { bins, counts, sums, squares } = this.halves[parity as 0 | 1];
      for (let i = parity; i < count; i += 2) {
        const d = results[i]!;
        if (d !== d) continue;
        const bin = Math.floor(chances[i]! * bins);
        counts[bin]! += 1;
        sums[bin]! += d;
        squares[bin]! += d * d;
      }
    }
  }

  /** @param ahead whether to go ahead when nothing more is known */
  worth(ahead: boolean): Worth {
    const [first, second] = this.halves;
    let [sum, squares, count] = [0, 0, 0];
    for (const [learnt, measured] of [
      [first.goesAhead(), second],
      [second.goesAhead(), first],
    ] as const) {
      learnt.forEach((goes, bin) => {
        count += measured.counts[bin]!;
        if (goes === ahead) return;
        sum += goes ? measured.sums[bin]! : -measured.sums[bin]!;
        squares += measured.squares[bin]!;
      });
    }
    const { value, error } = meanWorth(sum, squares, count);
    return { value: Math.max(value, 0), error };
  }
}
