import { momentsOf } from '../../study/moments';
import { countUpTo, quantile } from '../../study/quantile';
import { histogram, type Histogram } from '../../study/histogram';

/** The percentiles that are shown, in per cent. */
export const shownPercentiles = [5, 10, 25, 50, 75, 90, 95] as const;
/** Number of steps of the cumulative curve. */
const curveSteps = 200;

/** Figures of the draws of one result. */
export interface Summary {
  /** Draws whose result could be computed; the other figures are of these. */
  readonly count: number;
  readonly mean: number;
  /** Standard error of the mean; NaN for fewer than two draws. */
  readonly meanError: number;
  /** Standard deviation; NaN for fewer than two draws. */
  readonly sd: number;
  /** One for each of `shownPercentiles`, in that order. */
  readonly percentiles: readonly number[];
  /** Share of the draws above the target, and of those that meet it exactly. */
  readonly above: number;
  readonly equal: number;
  /** Results below which 0, 1/200, 2/200, … of the draws lie. */
  readonly curve: readonly number[];
}

/** Figures of the draws of a result, and of those of another plan where that is shown with it. */
export interface DrawSpread {
  readonly main: Summary;
  readonly beside: Summary | undefined;
  readonly histogram: Histogram;
}

/** @param sorted ascending, not empty */
export function summaryOf(sorted: Float64Array, target: number): Summary {
  const { mean, sd } = momentsOf(sorted);
  const upTo = countUpTo(sorted, target);
  let below = upTo;
  while (below > 0 && sorted[below - 1] === target) below -= 1;
  return {
    count: sorted.length,
    mean,
    sd,
    meanError: sd / Math.sqrt(sorted.length),
    percentiles: shownPercentiles.map((share) => quantile(sorted, share / 100)),
    above: 1 - upTo / sorted.length,
    equal: (upTo - below) / sorted.length,
    curve: Array.from({ length: curveSteps + 1 }, (_, i) => quantile(sorted, i / curveSteps)),
  };
}

/**
 * @param main ascending
 * @param beside another plan's results, ascending
 * @returns undefined where no result could be computed
 */
export function spreadOf(main: Float64Array, beside: Float64Array | undefined, target: number): DrawSpread | undefined {
  if (main.length === 0) return undefined;
  const other = beside !== undefined && beside.length > 0 ? beside : undefined;
  return {
    main: summaryOf(main, target),
    beside: other && summaryOf(other, target),
    histogram: histogram(other === undefined ? [main] : [main, other]),
  };
}
