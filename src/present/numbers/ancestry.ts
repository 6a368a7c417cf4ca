import { reach } from '../../model/graph';
import type { Cell } from '../../model/cell';
import { readsOf } from '../../model/links/reads';
import type { Model, Plan } from '../../model/model';

/** The cells from which a cell is computed in a plan, directly or not, without itself. */
function sources(plan: Plan, cell: number): Set<number> {
  const found = new Set<number>();
  const waiting = [...readsOf(plan.contents[cell])];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (found.has(id)) continue;
    found.add(id);
    waiting.push(...readsOf(plan.contents[id]));
  }
  found.delete(cell);
  return found;
}

function inFileOrder(ids: Iterable<number>, { cells }: Model): Cell[] {
  return [...new Set(ids)].sort((a, b) => a - b).flatMap((id) => cells[id] ?? []);
}

/** The inputs from which a cell is computed in any of some plans, in file order. */
export function leaves(model: Model, plans: readonly Plan[], cell: number): Cell[] {
  const ids = plans.flatMap((plan) => [...sources(plan, cell)].filter((id) => plan.contents[id]?.kind === 'input'));
  return inFileOrder(ids, model);
}

/** The cells whose formulas name a cell in any of some plans, in file order. */
export function readersOf(model: Model, plans: readonly Plan[], cell: number): Cell[] {
  return inFileOrder(
    plans.flatMap((plan) => plan.structure.feeds[cell] ?? []),
    model,
  );
}

/** The headlines that a change of a cell reaches, itself excluded, in file order. */
export function headlinesReached(model: Model, plans: readonly Plan[], cell: number): Cell[] {
  const ids = plans.flatMap((plan) => [...reach([cell], plan.structure.feeds)]);
  return inFileOrder(ids, model).filter(({ id, role }) => role === 'headline' && id !== cell);
}
