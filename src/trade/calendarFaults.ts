import { wording } from '../language/wording';
import { numberToText, type Decimal } from '../core/number';
import { problem, type Problem } from '../core/problem';
import type { Schedule } from './schedule';

/** Ten years: longer calendars say nothing new. */
const mostDays = 3660;
const mostSowings = 20_000;
const largestBatch = 1e9;

/** What is wrong with a batch set by hand. */
export function batchFaults(batch: Decimal | undefined): Problem[] {
  if (batch === undefined || (batch.isInteger() && batch.gt(0) && batch.lte(largestBatch))) return [];
  const text = numberToText(batch);
  return [
    problem('calendar-batch', wording`batch not usable: ${text}. Give a whole number of plants above 0.`, { text }),
  ];
}

/** What is wrong with a calendar's length in days. */
export function lengthFaults({ interval }: Schedule, days: number): Problem[] {
  const text = String(days);
  if (!Number.isInteger(days) || days < 1 || days > mostDays) {
    const fix = wording`Give a whole number from 1 to ${mostDays}.`;
    return [problem('calendar-days', wording`days of the calendar not usable: ${text}. ${fix}`, { text })];
  }
  if (!interval.gt(0) || days / interval.toNumber() <= mostSowings) return [];
  const shown = numberToText(interval);
  const fix = wording`It makes more than ${mostSowings} sowings: sow less often or look at fewer days.`;
  return [
    problem('calendar-sowings', wording`interval too short for a calendar: ${shown} days. ${fix}`, { text: shown }),
  ];
}

/** A calendar without any sowing. */
export function noSowing(skipped: number, days: number): Problem {
  const fix =
    skipped > 0
      ? wording`All sowings fall in closed times: open one, or move the first sowing.`
      : wording`The first sowing falls after the end: move it, or look at more days.`;
  const message = wording`nothing is sown in the calendar: ${days} days. ${fix}`;
  return problem('calendar-no-sowing', message, { text: wording`${days} days` });
}

/** A notice where the turnaround makes the calendar's batch smaller than the one on whole boards. */
export function smallerBatch(batch: number, whole: Decimal): Problem[] {
  if (!whole.gt(batch)) return [];
  const fix = wording`The formula for whole boards gives ${numberToText(whole)}, but the boards that a batch left are still out of use when it stands in the next stage.`;
  const text = String(batch);
  return [problem('calendar-turnaround', wording`batch smaller because of the turnaround: ${text}. ${fix}`, { text })];
}
