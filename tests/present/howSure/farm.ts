import type { Model } from '../../../src/model/model';
import type { DrawsFound } from '../../../src/present/howSure/drawsFound';
import { draws, type DrawsRequest } from '../../../src/jobs/draws';
import type { Report } from '../../../src/jobs/job';
import { done } from '../../jobs/done';
import { idOf, modelOf } from '../../model/table';

/** A made-up farm of two plans whose difference in `r` is x + y - 1; both drawn evenly from 0 to 2. */
export const farm = [
  'x: 1 | range: 0 2 uniform | label: Price',
  'y: 1 | range: 0 2 uniform | label: Wage',
  'extra: 0 | in A: 0 | in B: x + y - 1',
  'r: 3 + x + extra | label: Margin',
].join('\n');

export function asking(model: Model, more: Partial<DrawsRequest> = {}): DrawsRequest {
  const last = model.plans.length - 1;
  const subject = { result: idOf(model, 'r'), plan: last, against: last === 0 ? undefined : 0 };
  return { subject, beside: undefined, draws: 20_000, seed: 1, target: 0, drivers: true, ...more };
}

/** All reports of a run with something new, the end as the last. */
export function reports(
  text: string,
  more: Partial<DrawsRequest> = {},
): { model: Model; all: Pick<Report<DrawsFound>, 'found'>[]; last: DrawsFound } {
  const model = modelOf(text);
  if (model.faults.length > 0) throw new Error(model.faults[0]!.message);
  const run = done(draws, model.sheet, asking(model, more));
  return { model, all: [...run.reports, { found: run.found }], last: run.found };
}
