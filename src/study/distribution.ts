import { exponential, logarithm } from '../core/elementary';
import type { Decimal } from '../core/number';
import type { Range, Shape } from '../model/cell';
import { BetaQuantile } from './betaQuantile';
import { normalQuantile } from './normal';

/** How an uncertain input is spread, in its own unit. */
export interface Distribution {
  readonly mean: number;
  readonly variance: number;
  /** The value that a draw stays below with a given chance, above 0 and below 1. */
  readonly quantile: (p: number) => number;
}

/** The ends of a range, and the input's number moved to the nearer end where it lies outside. */
interface Ends {
  readonly low: number;
  readonly mode: number;
  readonly high: number;
}

/** Standard deviations from the 5th to the 95th percentile of a normal variable. */
const normalSpan = 3.289707253902945;

function certain(value: number): Distribution {
  return { mean: value, variance: 0, quantile: () => value };
}

/** Kotz & van Dorp, Beyond Beta (2004), chapter 1. */
function triangular({ low, mode, high }: Ends): Distribution {
  const span = high - low;
  const rising = (mode - low) / span;
  return {
    mean: low + (span * (1 + rising)) / 3,
    variance: (span * span * (1 - rising * (1 - rising))) / 18,
    quantile: (p) =>
      p < rising ? low + span * Math.sqrt(p * rising) : high - span * Math.sqrt((1 - p) * (1 - rising)),
  };
}

/**
 * The beta distribution with shapes 1 + 4 (mode - low)/span and 1 + 4 (high - mode)/span (Malcolm and others,
 * Operations Research 7 (1959) 646-669). Its variance is exact; the (span/6)² of that text is only near it.
 */
function pert({ low, mode, high }: Ends): Distribution {
  const span = high - low;
  const a = 1 + (4 * (mode - low)) / span;
  const b = 6 - a;
  const beta = new BetaQuantile(a, b);
  return {
    mean: low + (span * a) / 6,
    variance: (span * span * a * b) / (6 * 6 * 7),
    quantile: (p) => low + span * beta.at(p),
  };
}

function uniform({ low, high }: Ends): Distribution {
  const span = high - low;
  return { mean: low + span / 2, variance: (span * span) / 12, quantile: (p) => low + p * span };
}

function either({ low, high }: Ends): Distribution {
  const half = (high - low) / 2;
  return { mean: low + half, variance: half * half, quantile: (p) => (p < 0.5 ? low : high) };
}

function normal({ low, high }: Ends): Distribution {
  const mean = low + (high - low) / 2;
  const deviation = (high - low) / normalSpan;
  return { mean, variance: deviation * deviation, quantile: (p) => mean + deviation * normalQuantile(p) };
}

/** The logarithm is normal; NaN throughout for a low that is not above 0. */
function lognormal({ low, high }: Ends): Distribution {
  const median = Math.sqrt(low) * Math.sqrt(high);
  const deviation = (logarithm(high) - logarithm(low)) / normalSpan;
  const square = deviation * deviation;
  const mean = median * exponential(square / 2);
  return {
    mean,
    variance: mean * mean * (exponential(square) - 1),
    quantile: (p) => median * exponential(deviation * normalQuantile(p)),
  };
}

const makers: Readonly<Record<Shape, (ends: Ends) => Distribution>> = {
  triangular,
  pert,
  uniform,
  either,
  normal,
  lognormal,
};

/**
 * The distribution that a range stands for (model-format, Ranges). A range whose ends are equal is certain.
 * @param value the input's number, the mode of `triangular` and `pert`; one outside the range counts as its nearer end
 */
export function distributionOf({ low, high, shape }: Range, value: Decimal): Distribution {
  const [from, to] = [low.toNumber(), high.toNumber()];
  if (!(from < to)) return certain(from);
  return makers[shape]({ low: from, mode: Math.min(Math.max(value.toNumber(), from), to), high: to });
}

/** The median of a range's distribution; for `either`, which has none, the middle of the range. */
export function medianOf(range: Range, value: Decimal): number {
  const distribution = distributionOf(range, value);
  return range.shape === 'either' ? distribution.mean : distribution.quantile(0.5);
}
