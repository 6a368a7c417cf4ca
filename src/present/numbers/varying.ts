import { reach } from '../../model/graph';
import type { Model } from '../../model/model';

/** The cells that can differ between some plans: those with a content of a plan's own, and all that these feed. */
export function varying({ plans }: Model, columns: readonly number[]): ReadonlySet<number> {
  const selection = columns.flatMap((p) => plans[p] ?? []);
  const own = new Set(
    selection.flatMap(({ contents }) => contents.flatMap(({ own: isOwn }, id) => (isOwn ? [id] : []))),
  );
  return selection.reduce<ReadonlySet<number>>((cells, plan) => reach(cells, plan.structure.feeds), own);
}
