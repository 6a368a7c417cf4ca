import { wording, wordingOf } from '../language/wording';
import { decimal, type Decimal } from '../core/number';
import type { Batch } from '../model/trials';
import type { Terms } from '../trade/timeStudy';
import type { Arguments } from './arguments';
import { jsonNumber, shortNumber } from './outcome';

/** What is shown of timed batches, for both kinds of reader. */
interface TimedShown {
  readonly document: readonly Readonly<Record<string, unknown>>[];
  /** Blank where there is nothing to show. */
  readonly table: string;
}

/** What is asked of timed batches. */
export interface TimedAsked {
  readonly batches: readonly Batch[];
  readonly terms: Terms;
  /** In per cent. */
  readonly confidence: Decimal;
  readonly options: Arguments['options'];
}

/** A way to look at timed batches. */
export type TimedView = (asked: TimedAsked) => TimedShown;

/** Heads of columns that several tables of timed batches have. */
export const timedHeads = {
  step: wording`step`,
  batches: wording`batches`,
  plants: wording`plants`,
  from: wordingOf('lower end of an interval')`from`,
  to: wordingOf('upper end of an interval')`to`,
} as const;

/** The plain number as documents carry it; null where there is none. */
export function floatText(value: number | undefined): string | null {
  return value === undefined || !Number.isFinite(value) ? null : jsonNumber(decimal(value));
}

/** The same for people. */
export function shortFloat(value: number | undefined): string {
  return shortNumber(decimal(value !== undefined && Number.isFinite(value) ? value : NaN));
}

/** Batches of each step, in the order in which the steps first occur. */
export function byStep(batches: readonly Batch[]): [step: string, batches: Batch[]][] {
  const steps = [...new Set(batches.map(({ step }) => step))];
  return steps.map((step) => [step, batches.filter((batch) => batch.step === step)]);
}
