import type { Format } from '../text/numberFormat';
import { errorText, finer, inSteps, stepFor, type RoundingStep } from './rounding';
import { shownPercentiles, type DrawSpread, type Summary } from './summary';
import { commonTexts } from '../text/commonTexts';

/** A line of a table: a number for each set of draws. */
export interface TableLine {
  readonly what: string;
  readonly numbers: readonly string[];
}

function sets({ main, beside }: DrawSpread): Summary[] {
  return beside === undefined ? [main] : [main, beside];
}

function stepOf({ percentiles }: Summary): RoundingStep {
  const [low, high] = [percentiles[0] ?? NaN, percentiles.at(-1) ?? NaN];
  return finer(stepFor(high > low ? high - low : Math.abs(low)));
}

/**
 * The figures of the draws.
 * @param target as it is shown
 */
export function figureRows(spread: DrawSpread, target: string, format: Format): TableLine[] {
  const all = sets(spread);
  const step = stepOf(spread.main);
  const each = (text: (summary: Summary) => string): string[] => all.map(text);
  const known = (value: number, text: string): string => (Number.isNaN(value) ? commonTexts.unknown : text);
  return [
    { what: 'draws that could be computed', numbers: each(({ count }) => format.written(String(count))) },
    { what: 'mean', numbers: each(({ mean }) => inSteps(mean, step, format)) },
    {
      what: 'standard error of the mean',
      numbers: each(({ meanError }) => known(meanError, errorText(meanError, format))),
    },
    {
      what: 'standard deviation',
      numbers: each(({ sd }) => (Number.isNaN(sd) ? commonTexts.unknown : inSteps(sd, step, format))),
    },
    ...shownPercentiles.map((share, k) => ({
      what: share === 50 ? 'middle draw (50 % are below)' : `${share} % are below`,
      numbers: each(({ percentiles }) => inSteps(percentiles[k]!, step, format)),
    })),
    { what: `above ${target}, per cent`, numbers: each(({ above }) => inSteps(above * 100, { exponent: -1 }, format)) },
  ];
}

/** The bins of the histogram. */
export function binRows({ histogram: { from, width, shares } }: DrawSpread, format: Format): TableLine[] {
  const edge: RoundingStep = { exponent: Math.floor(Math.log10(width) + 1e-9) };
  return (shares[0] ?? []).map((_, bin) => ({
    what: `${inSteps(from + bin * width, edge, format)} – ${inSteps(from + (bin + 1) * width, edge, format)}`,
    numbers: shares.map((set) => inSteps((set[bin] ?? 0) * 100, { exponent: -2 }, format)),
  }));
}
