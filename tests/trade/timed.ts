import { decimal } from '../../src/core/number';
import type { Batch } from '../../src/model/trials';
import { halfWidths } from '../../src/study/studentT';
import { timeStudy, type TimeSpread, type StepTime, type Terms } from '../../src/trade/timeStudy';

/** Plants, seconds and, if not 100, the rating of one batch. */
export type Timed = readonly [plants: number, seconds: number | string, rating?: number];

/** Batches of one step. */
export function batchesOf(timed: readonly Timed[], step = 'moving'): Batch[] {
  return timed.map(([plants, seconds, rating = 100], i) => ({
    row: i + 2,
    step,
    plants: decimal(plants),
    seconds: decimal(seconds),
    rating: decimal(rating),
    lost: undefined,
    date: '',
    worker: '',
    note: '',
    way: '',
    leftOut: '',
  }));
}

/** Batches of one plant each. */
export function single(...seconds: readonly (number | string)[]): Timed[] {
  return seconds.map((each) => [1, each]);
}

export const usualTerms: Terms = {
  allowance: decimal(15),
  allowanceOf: 'job',
  within: decimal(5),
  halfWidths: halfWidths(0.05),
};

/** The entry of one step. */
export function study(timed: readonly Timed[], terms: Partial<Terms> = {}): StepTime {
  return timeStudy(batchesOf(timed), { ...usualTerms, ...terms })[0]!;
}

/** How far the batches of one step lie apart, where there are two or more. */
export function spread(timed: readonly Timed[], terms: Partial<Terms> = {}): TimeSpread {
  return study(timed, terms).spread!;
}
