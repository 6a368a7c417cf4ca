import type { Format } from '../text/numberFormat';
import { ownText } from './secondsDigits';
import { stepName } from './sentences';
import { ownSeconds, type StepFound } from './study';

/** A line of the table that goes with the picture. */
interface BatchRow {
  readonly step: string;
  /** Its position among all rows of the step, from 1. */
  readonly number: number;
  readonly plants: string;
  readonly seconds: string;
  /** Deviation of its seconds from the step's mean, in per cent. */
  readonly off: string;
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
      plants: format.full(batch.plants),
      seconds: ownText(seconds, format),
      off: `${format.signed(off, undefined, 1)} %`,
    };
  });
}
