/** What knowing something is worth, with the standard error that the number of draws leaves. */
export interface Worth {
  readonly value: number;
  readonly error: number;
}

/** The mean of some numbers from their sum and their squares' sum, with its standard error. */
export function meanWorth(sum: number, squares: number, count: number): Worth {
  const value = sum / count;
  const variance = Math.max(squares / count - value * value, 0);
  return { value, error: Math.sqrt(variance / count) };
}

/**
 * What it is worth to know everything before choosing among options, E[max over options] - max over options of E, from
 * draws of what each option yields: the least of the options' expected opportunity losses (Raiffa & Schlaifer, Applied
 * Statistical Decision Theory (1961), chapter 4). From the same draws it is never negative. Its error takes the best
 * option as known; where two are nearly as good, the value from few draws is a little low.
 */
export class PerfectInformation {
  /** For each option, how much more the best option of each draw yields, summed up, and the squares of that. */
  private readonly missed: Float64Array;
  private readonly squares: Float64Array;
  private count = 0;

  constructor(options: number) {
    this.missed = new Float64Array(options);
    this.squares = new Float64Array(options);
  }

  /** Adds draws, one column for each option; draws with an option that is NaN are left out. */
  add(options: readonly Float64Array[], count: number): void {
    for (let i = 0; i < count; i += 1) {
      let most = -Infinity;
      for (const option of options) most = Math.max(most, option[i]!);
      if (most !== most) continue;
      this.count += 1;
      for (let k = 0; k < options.length; k += 1) {
        const less = most - options[k]![i]!;
        this.missed[k]! += less;
        this.squares[k]! += less * less;
      }
    }
  }

  /** Index of the option with the highest mean, the first of equals. */
  best(): number {
    return this.missed.indexOf(Math.min(...this.missed));
  }

  worth(): Worth {
    const best = this.best();
    return meanWorth(this.missed[best]!, this.squares[best]!, this.count);
  }
}
