import type { Model, Plan } from '../../model/model';
import { linksAmong, type Link, type Links } from '../../model/links/links';
import { surroundings } from '../../model/links/surroundings';
import type { Reach } from './choices';

/** More boxes than this nobody reads at once, and laying them out takes longer than anyone likes to wait. */
export const mostDrawn = 150;

/** What the picture shows: which entries, and the arrows between them. */
export interface Drawn {
  /** The entry in the middle; undefined where the whole model is drawn. */
  readonly middle: number | undefined;
  /** In file order. */
  readonly ids: readonly number[];
  /** From what is used to what uses it. */
  readonly arrows: readonly Link[];
  /**
   * By entry, the steps of the shortest way from the middle: below 0 what the middle hangs on, above 0 what hangs on
   * it. Empty for the whole model.
   */
  readonly places: ReadonlyMap<number, number>;
  /** Entries that belong into the picture but were too many. */
  readonly leftOut: number;
}

function withArrows(plans: readonly Plan[], links: Links, drawn: Omit<Drawn, 'arrows' | 'ids'>, ids: number[]): Drawn {
  ids.sort((a, b) => a - b);
  return { ...drawn, ids, arrows: linksAmong(plans, links, new Set(ids)) };
}

/** The whole model; of one that is too large nothing is drawn. */
export function wholeDrawn({ cells }: Model, plans: readonly Plan[], links: Links): Drawn {
  const fits = cells.length <= mostDrawn;
  const drawn = { middle: undefined, places: new Map(), leftOut: fits ? 0 : cells.length };
  return withArrows(plans, links, drawn, fits ? cells.map(({ id }) => id) : []);
}

/** An entry with what it hangs on and what hangs on it; of too many entries, the nearest. */
export function drawnAround(plans: readonly Plan[], links: Links, middle: number, reach: Reach): Drawn {
  const { before, after } = surroundings(plans, middle);
  const far = reach === 'all' ? Infinity : Number(reach);
  const away = ([, steps]: readonly [number, number]): number => Math.abs(steps);
  const all = [...[...before].map(([id, steps]) => [id, -steps] as const), ...after];
  // On a circle an entry stands on both sides: it counts where it is nearer.
  const nearest = new Map([...all].sort((a, b) => away(b) - away(a)));
  const near = [...nearest].filter((one) => away(one) <= far).sort((a, b) => away(a) - away(b) || a[0] - b[0]);
  const shown = near.slice(0, mostDrawn - 1);
  const places = new Map([[middle, 0] as const, ...shown]);
  return withArrows(plans, links, { middle, places, leftOut: near.length - shown.length }, [...places.keys()]);
}
