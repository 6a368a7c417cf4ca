import type { Decimal } from '../../core/number';
import { exportedNumber, type TableEntry } from '../../files/exportTable';
import type { TimeSpread } from '../../trade/timeStudy';
import type { Format } from '../text/numberFormat';
import type { StepFound } from './study';
import type { TimingTerms } from './terms';
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
  const { step, rows, batches, time, lostShare } = found;
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
    lost: lostShare === undefined ? '' : perCent(lostShare, format),
  };
}

const heads = [
  'step',
  'batches',
  'left out',
  'plants',
  'seconds per plant',
  'from',
  'to',
  'confidence %',
  'standard time',
  'allowance %',
  'allowance of',
  'batches needed',
  'within %',
  'lost share',
];

/** The result table for other programs, with all digits and with the terms in each row. */
export function exportedResults(study: readonly StepFound[], timing: TimingTerms): TableEntry[][] {
  const { terms, confidence, hasStandardTime } = timing;
  const rows = study.map((found): TableEntry[] => {
    const { step, rows: all, batches, time, lostShare } = found;
    const spread = spreadOf(found);
    return [
      step,
      { number: String(batches.length) },
      { number: String(all.length - batches.length) },
      exportedNumber(time?.plants),
      exportedNumber(time?.secondsPerPlant),
      exportedNumber(spread?.interval[0]),
      exportedNumber(spread?.interval[1]),
      exportedNumber(confidence),
      exportedNumber(hasStandardTime ? time?.standardTime : undefined),
      exportedNumber(terms.allowance),
      terms.allowanceOf,
      exportedNumber(spread?.batchesNeeded),
      exportedNumber(terms.within),
      exportedNumber(lostShare),
    ];
  });
  return [heads, ...rows];
}
