import { decimal, numberToText, type Decimal } from '../core/number';
import type { Way } from '../study/best';
import { bestAlongInSteps, type BestStretch } from '../study/envelope';
import { planLines, type LinesSubject } from '../present/allPlans/lines';
import { searchReports, type Prepared, type Report } from './job';

/** A search for which plan is the best along an input; numbers as text with all their digits. */
export interface BestPlanRequest {
  readonly subject: LinesSubject;
  readonly way: Way;
  readonly from: string;
  readonly to: string;
}

interface StretchText {
  readonly from: string;
  readonly to: string;
  readonly best: readonly number[];
  readonly isBehind: boolean;
}

/** The stretches, ascending; `best` counts among the lines of the subject. */
export type BestPlanFound = readonly StretchText[];

/** Searches exactly for which plan is the best along an input; finds nothing where the cell is no input of the plan. */
export function* bestPlan(
  { model, values }: Prepared,
  { subject, way, from, to }: BestPlanRequest,
): Generator<Report<BestPlanFound>, BestPlanFound> {
  const found = planLines(model, values, subject);
  if (found === undefined) return [];
  const range = { from: decimal(from), to: decimal(to) };
  const curves = found.lines.map(({ line }) => line);
  const stretches = yield* searchReports(bestAlongInSteps(curves, range, way, [found.lever.base]));
  return stretches.map((one) => ({ ...one, from: numberToText(one.from), to: numberToText(one.to) }));
}

/** The stretches found, as exact numbers. */
export function readBestPlan(found: BestPlanFound): BestStretch[] {
  const read = (text: string): Decimal => decimal(text);
  return found.map((one) => ({ ...one, from: read(one.from), to: read(one.to) }));
}
