import type { Plan } from '../model';
import { distances } from './distances';
import { readsOf } from './reads';

/** What a cell hangs on and what hangs on it, directly or not, in any of some plans. */
export interface Surroundings {
  /** The cells from which it is computed, itself excluded, with the steps of the shortest way, the nearest first. */
  readonly before: ReadonlyMap<number, number>;
  /** The cells that are computed from it, in the same way. */
  readonly after: ReadonlyMap<number, number>;
  /** How many of those before it are inputs in a plan in which it hangs on them. */
  readonly inputs: number;
}

/** The shorter of the ways, each within one plan: a way that changes plans is none. */
function nearest(found: readonly ReadonlyMap<number, number>[], cell: number): Map<number, number> {
  const all = found.flatMap((one) => [...one]).sort(([a, near], [b, far]) => near - far || a - b);
  const first = new Map<number, number>();
  for (const [id, steps] of all) if (id !== cell && !first.has(id)) first.set(id, steps);
  return first;
}

export function surroundings(plans: readonly Plan[], cell: number): Surroundings {
  const before = plans.map(({ contents }) => distances(cell, contents.map(readsOf)));
  const after = plans.map(({ structure }) => distances(cell, structure.feeds));
  const inputs = plans.flatMap(({ contents }, p) =>
    [...(before[p]?.keys() ?? [])].filter((id) => id !== cell && contents[id]?.kind === 'input'),
  );
  return { before: nearest(before, cell), after: nearest(after, cell), inputs: new Set(inputs).size };
}
