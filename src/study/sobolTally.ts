import { tieTolerance } from '../core/arithmetic';

/**
 * The sums from which Sobol' indices are computed. Results are counted from a level near their mean, so that a large
 * constant costs no digits.
 */
export class SobolTally {
  private readonly cross: Float64Array;
  private readonly drift: Float64Array;
  private readonly spread: Float64Array;
  private readonly pairs: Float64Array;
  private count = 0;
  private sum = 0;
  private squares = 0;
  private least = Infinity;
  private most = -Infinity;

  constructor(
    private readonly inputs: number,
    private readonly level: number,
  ) {
    this.cross = new Float64Array(inputs);
    this.drift = new Float64Array(inputs);
    this.spread = new Float64Array(inputs);
    this.pairs = new Float64Array(inputs);
  }

  /** Adds results of A or of B; those that cannot be computed are left out. */
  addResults(f: Float64Array, n: number): void {
    for (let k = 0; k < n; k += 1) {
      const value = f[k]!;
      const off = value - this.level;
      if (off - off !== 0) continue;
      this.count += 1;
      this.sum += off;
      this.squares += off * off;
      if (value < this.least) this.least = value;
      if (value > this.most) this.most = value;
    }
  }

  /** Adds the results of A, of B, and of A with one input from B; rows that cannot be computed are left out. */
  addInput(input: number, fa: Float64Array, fb: Float64Array, fab: Float64Array, n: number): void {
    let [cross, drift, spread, pairs] = [0, 0, 0, 0];
    for (let k = 0; k < n; k += 1) {
      const change = fab[k]! - fa[k]!;
      const product = (fb[k]! - this.level) * change;
      if (product - product !== 0) continue;
      cross += product;
      drift += change;
      spread += change * change;
      pairs += 1;
    }
    this.cross[input]! += cross;
    this.drift[input]! += drift;
    this.spread[input]! += spread;
    this.pairs[input]! += pairs;
  }

  addTally(other: SobolTally): void {
    for (let i = 0; i < this.inputs; i += 1) {
      this.cross[i]! += other.cross[i]!;
      this.drift[i]! += other.drift[i]!;
      this.spread[i]! += other.spread[i]!;
      this.pairs[i]! += other.pairs[i]!;
    }
    this.count += other.count;
    this.sum += other.sum;
    this.squares += other.squares;
    this.least = Math.min(this.least, other.least);
    this.most = Math.max(this.most, other.most);
  }

  private isConstant(): boolean {
    if (this.count === 0) return false;
    return this.most - this.least <= tieTolerance * Math.max(Math.abs(this.most), Math.abs(this.least));
  }

  /** First-order and total index of an input; NaN where no result is known. */
  index(input: number): readonly [first: number, total: number] {
    if (this.isConstant()) return [0, 0];
    const mean = this.sum / this.count;
    const variance = this.squares / this.count - mean * mean;
    const pairs = this.pairs[input]!;
    const first = (this.cross[input]! - mean * this.drift[input]!) / pairs / variance;
    return [first, this.spread[input]! / (2 * pairs) / variance];
  }
}
