import { wording } from '../../language/wording';
import { figure, words, type DataCell, type DataTable } from '../table/dataTable';
import type { Format } from '../text/numberFormat';
import { errorText, finer, inSteps, stepFor, type RoundingStep } from './rounding';
import { shownPercentiles, type DrawSpread, type Summary } from './summary';
import { commonTexts } from '../text/commonTexts';
import { spreadTexts } from './texts';

/** A line of a table: a number for each set of draws. */
export interface TableLine {
  readonly what: string;
  readonly numbers: readonly DataCell[];
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
  const each = (value: (summary: Summary) => number, text: (value: number) => string): DataCell[] =>
    all.map((summary) => figure(text(value(summary)), value(summary)));
  const known = (value: number, text: string): string => (Number.isNaN(value) ? commonTexts.unknown : text);
  const inStep = (value: number): string => inSteps(value, step, format);
  return [
    {
      what: wording`draws that could be computed`,
      numbers: each(
        ({ count }) => count,
        (count) => format.written(String(count)),
      ),
    },
    { what: wording`mean`, numbers: each(({ mean }) => mean, inStep) },
    {
      what: wording`standard error of the mean`,
      numbers: each(
        ({ meanError }) => meanError,
        (value) => known(value, errorText(value, format)),
      ),
    },
    {
      what: wording`standard deviation`,
      numbers: each(
        ({ sd }) => sd,
        (value) => (Number.isNaN(value) ? commonTexts.unknown : inStep(value)),
      ),
    },
    ...shownPercentiles.map((share, k) => ({
      what: share === 50 ? wording`middle draw (50 % are below)` : wording`${share} % are below`,
      numbers: each(({ percentiles }) => percentiles[k]!, inStep),
    })),
    {
      what: wording`above ${target}, per cent`,
      numbers: each(
        ({ above }) => above * 100,
        (value) => inSteps(value, { exponent: -1 }, format),
      ),
    },
  ];
}

/** A bin of the histogram with its ends. */
interface BinLine extends TableLine {
  readonly ends: readonly [from: DataCell, to: DataCell];
}

/** The bins of the histogram. */
export function binRows({ histogram: { from, width, shares } }: DrawSpread, format: Format): BinLine[] {
  const edge: RoundingStep = { exponent: Math.floor(Math.log10(width) + 1e-9) };
  const at = (bin: number): DataCell => figure(inSteps(from + bin * width, edge, format), from + bin * width);
  const share = (value: number): DataCell => figure(inSteps(value * 100, { exponent: -2 }, format), value * 100);
  return (shares[0] ?? []).map((_, bin) => {
    const ends = [at(bin), at(bin + 1)] as const;
    return {
      what: `${ends[0].text} – ${ends[1].text}`,
      ends,
      numbers: shares.map((set) => share(set[bin] ?? 0)),
    };
  });
}

/** The figures as a table with a column for each set of draws. */
export function figuresTable(caption: string, names: readonly string[], lines: readonly TableLine[]): DataTable {
  return {
    caption,
    columns: ['', ...names].map((name) => ({ name })),
    rows: lines.map(({ what, numbers }) => [words(what), ...numbers]),
  };
}

/** The bins as a table; other programs have their ends in columns of their own. */
export function binsTable(caption: string, names: readonly string[], lines: readonly BinLine[]): DataTable {
  const ends = [spreadTexts.binFrom, spreadTexts.binTo].map((name) => ({ name, aside: true }));
  return {
    caption,
    columns: [{ name: commonTexts.fromTo }, ...ends, ...names.map((name) => ({ name }))],
    rows: lines.map((line) => [words(line.what), ...line.ends, ...line.numbers]),
  };
}
