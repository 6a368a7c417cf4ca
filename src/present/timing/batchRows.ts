import { ownSeconds } from '../../trade/timeStudy';
import { figure, words, type DataCell, type DataTable } from '../table/dataTable';
import type { Format } from '../text/numberFormat';
import { ownText } from './secondsDigits';
import { dotsTexts } from './dotsTexts';
import { stepName } from './sentences';
import { timingFields } from './texts';
import type { StepFound } from './study';

/** A line of the table that goes with the picture. */
interface BatchRow {
  readonly step: string;
  /** Its position among all rows of the step, from 1. */
  readonly number: number;
  readonly plants: DataCell;
  readonly seconds: DataCell;
  /** Deviation of its seconds from the step's mean, in per cent. */
  readonly off: DataCell;
}

/** The sound batches of a step; empty where it has no mean. */
export function batchRows({ step, rows, batches, time }: StepFound, format: Format): BatchRow[] {
  if (time === undefined) return [];
  return batches.map((batch) => {
    const seconds = ownSeconds(batch);
    const off = seconds.dividedBy(time.secondsPerPlant).minus(1).times(100);
    return {
      step: stepName(step),
      number: rows.findIndex(({ row }) => row === batch.row) + 1,
      plants: figure(format.full(batch.plants), batch.plants),
      seconds: figure(ownText(seconds, format), seconds),
      off: figure(`${format.signed(off, undefined, 1)} %`, off),
    };
  });
}

/** The sound batches of several steps as a table. */
export function dotsTable(study: readonly StepFound[], format: Format): DataTable {
  const { batch, secondsEach, againstMean } = dotsTexts;
  return {
    caption: dotsTexts.numbers,
    columns: [
      ...[timingFields.step, batch, timingFields.plants, secondsEach].map((name) => ({ name })),
      { name: againstMean, unit: '%' },
    ],
    rows: study
      .flatMap((found) => batchRows(found, format))
      .map(({ step, number, plants, seconds, off }) => [
        words(step),
        figure(String(number), number),
        plants,
        seconds,
        off,
      ]),
  };
}
