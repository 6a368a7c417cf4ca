import type { Job, Report } from '../../src/jobs/job';
import { buildModel } from '../../src/model/buildModel';
import type { Sheet } from '../../src/model/sheet';
import { evaluatePlan } from '../../src/model/values';

/** All that a job reports of a model, and what it ends with. */
export function done<Request, Found>(
  job: Job<Request, Found>,
  sheet: Sheet,
  request: Request,
): { reports: Report<Found>[]; found: Found } {
  const model = buildModel(sheet);
  const steps = job({ model, values: model.plans.map((plan) => evaluatePlan(plan)) }, request);
  const reports: Report<Found>[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done === true) return { reports, found: step.value };
    reports.push(step.value);
  }
}
