import type { Decimal } from '../../core/number';
import type { TimeSpread } from '../../trade/timeStudy';
import { figure, words, type DataCell, type DataTable } from '../table/dataTable';
import type { Format } from '../text/numberFormat';
import type { StepFound } from './study';
import type { TimingTerms } from './terms';
import { resultsTexts } from './resultsTexts';
import { termsTexts } from './termsTexts';
import { timingFields } from './texts';
import { agrees, perCent, secondsText, stepName } from './sentences';

/** A line of the result table as texts; blank where there is no figure. */
export interface ResultRow {
  readonly step: string;
  readonly name: string;
  readonly batches: string;
  readonly leftOut: number;
  readonly plants: string;
  readonly seconds: string;
  readonly from: string;
  readonly to: string;
  readonly standard: string;
  readonly needed: string;
  readonly lost: string;
}

/** The spread of a step's batches; undefined where there is a single batch, or where all agree. */
function spreadOf({ time }: StepFound): TimeSpread | undefined {
  return time?.spread === undefined || agrees(time.spread) ? undefined : time.spread;
}

export function resultRow(found: StepFound, { hasStandardTime }: TimingTerms, format: Format): ResultRow {
  const { step, rows, batches, time, losses } = found;
  const seconds = (value: Decimal | undefined): string =>
    time === undefined || value === undefined ? '' : secondsText(value, time, format);
  const spread = spreadOf(found);
  return {
    step,
    name: stepName(step),
    batches: format.written(String(batches.length)),
    leftOut: rows.length - batches.length,
    plants: time === undefined ? '' : format.full(time.plants),
    seconds: seconds(time?.secondsPerPlant),
    from: seconds(spread?.interval[0]),
    to: seconds(spread?.interval[1]),
    standard: hasStandardTime ? seconds(time?.standardTime) : '',
    needed: spread === undefined ? '' : format.full(spread.batchesNeeded),
    lost: losses === undefined ? '' : perCent(losses.share, format),
  };
}

/**
 * The figures of every step as a table; other programs have the terms in each row too.
 * @param rows made of the steps, in their order
 */
export function resultsTable(
  rows: readonly ResultRow[],
  study: readonly StepFound[],
  { terms, confidence, hasStandardTime }: TimingTerms,
  format: Format,
): DataTable {
  const line = (row: ResultRow, found: StepFound): DataCell[] => {
    const { batches, time, losses } = found;
    const spread = spreadOf(found);
    const term = (value: Decimal): DataCell => figure(format.full(value), value);
    return [
      words(row.name),
      figure(row.batches, batches.length),
      figure(row.seconds, time?.secondsPerPlant),
      figure(row.from, spread?.interval[0]),
      figure(row.to, spread?.interval[1]),
      figure(row.needed, spread?.batchesNeeded),
      figure(row.standard, hasStandardTime ? time?.standardTime : undefined),
      figure(row.plants, time?.plants),
      figure(row.lost, losses?.share.times(100)),
      figure(format.written(String(row.leftOut)), row.leftOut),
      term(confidence),
      term(terms.allowance),
      words(termsTexts.of[terms.allowanceOf]),
      term(terms.within),
    ];
  };
  const shown = [
    timingFields.step,
    resultsTexts.batches,
    timingFields.secondsEach,
    resultsTexts.from,
    resultsTexts.to,
    resultsTexts.needed,
    resultsTexts.standard,
    timingFields.plants,
  ];
  const asides = [
    resultsTexts.leftOutBatches,
    resultsTexts.confidence,
    resultsTexts.allowance,
    resultsTexts.allowanceOf,
    resultsTexts.within,
  ];
  return {
    caption: resultsTexts.heading,
    columns: [
      ...shown.map((name) => ({ name })),
      { name: resultsTexts.lost, unit: '%' },
      ...asides.map((name) => ({ name, aside: true })),
    ],
    rows: rows.flatMap((row, i) => {
      const found = study[i];
      return found === undefined ? [] : [line(row, found)];
    }),
  };
}
