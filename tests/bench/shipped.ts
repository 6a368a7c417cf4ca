// The shipped model that the benches measure, in the plan that has both stages.
import { readFileSync } from 'node:fs';
import { readModelText } from '../../src/files/readModel';
import type { Plan } from '../../src/model/model';

const file = new URL('../../models/transplant-hire.csv', import.meta.url);

export const { model } = readModelText(readFileSync(file, 'utf8'));
if (model.faults.length > 0) throw new Error(`the shipped model has faults: ${model.faults[0]?.message}`);

/** The cell of a name. */
export function cellOf(name: string): number {
  const id = model.ids.get(name);
  if (id === undefined) throw new Error(`the shipped model has no cell ${name}`);
  return id;
}

function planNamed(name: string): Plan {
  const plan = model.plans.find((candidate) => candidate.name === name);
  if (plan === undefined) throw new Error(`the shipped model has no plan ${name}`);
  return plan;
}

export const plan = planNamed('Nursery first');
export const against = planNamed('Straight to finishing');
