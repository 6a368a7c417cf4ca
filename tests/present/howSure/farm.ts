import type { Model } from '../../../src/model/model';
import type { DrawsFound, Report, Sent } from '../../../src/present/howSure/reply';
import { runRisk } from '../../../src/jobs/runRisk';
import { idOf, modelOf } from '../../model/table';

/** A made-up farm of two plans whose difference in `r` is x + y - 1; both drawn evenly from 0 to 2. */
export const farm = [
  'x: 1 | range: 0 2 uniform | label: Price',
  'y: 1 | range: 0 2 uniform | label: Wage',
  'extra: 0 | in A: 0 | in B: x + y - 1',
  'r: 3 + x + extra | label: Margin',
].join('\n');

export type Asked = Omit<Sent, 'id' | 'sheet'>;

export function asking(model: Model, more: Partial<Asked> = {}): Asked {
  const last = model.plans.length - 1;
  const subject = { result: idOf(model, 'r'), plan: last, against: last === 0 ? undefined : 0 };
  return { subject, beside: undefined, draws: 20_000, seed: 1, target: 0, ...more };
}

/** All reports of a run. */
export function reports(text: string, more: Partial<Asked> = {}): { model: Model; all: Report[]; last: DrawsFound } {
  const model = modelOf(text);
  if (model.faults.length > 0) throw new Error(model.faults[0]!.message);
  const all = [...runRisk(model, asking(model, more))];
  const last = all.flatMap(({ found }) => found ?? []).at(-1);
  if (last === undefined) throw new Error('nothing was found');
  return { model, all, last };
}
