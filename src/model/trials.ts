import type { Decimal } from '../core/number';
import type { Problem } from '../core/problem';
import type { Reading } from './findings';
import type { Sheet } from './sheet';

/** One timed batch: a row of a trials file that is sound in every field. */
export interface Batch {
  /** Record number in the file; the header is 1. */
  readonly row: number;
  /** The step of the work that was timed. */
  readonly step: string;
  /** A whole number above 0. */
  readonly plants: Decimal;
  /** Time of the whole batch by the watch, above 0; not yet multiplied by the rating. */
  readonly seconds: Decimal;
  /** The worker's pace in per cent, above 0; 100 where none is given. */
  readonly rating: Decimal;
  /** Plants lost in the step, none to all; undefined where nobody counted. */
  readonly lost: Decimal | undefined;
  /** A day of the calendar as `2031-03-09`, or blank. */
  readonly date: string;
  readonly worker: string;
  readonly note: string;
  /** The way of working, such as `at the bed` or `workbench`; blank where none is named. */
  readonly way: string;
  /** Why a person leaves it out of every figure; blank where it counts. */
  readonly leftOut: string;
}

/** A trials file: its text, which can be edited, and what is understood of it. */
export interface Trials {
  readonly sheet: Sheet;
  /** The sound rows in file order; a row with a fault is in the sheet and in the faults only. */
  readonly batches: readonly Batch[];
  /** All faults, those of the file first, then by row. */
  readonly faults: readonly Problem[];
  /** What a reader should know and need not mend. */
  readonly notices: readonly Problem[];
  /** What was found while the text was read, and is no fault of a field. */
  readonly reading: Reading;
  /** True where the file as a whole could not be used: the sheet is empty, and the faults say why. */
  readonly refused: boolean;
}
