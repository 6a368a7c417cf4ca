import { isInputInAny, type Plan } from '../model';
import { longestWays } from './longestWays';
import { readsOf } from './reads';

/** A formula that names a cell, in some of the plans asked about. */
export interface Link {
  /** The cell that is named. */
  readonly from: number;
  /** The cell whose formula names it. */
  readonly to: number;
  /** The plans in which it does, by their places among those asked about, in ascending order. */
  readonly plans: readonly number[];
}

/** How cells hang together in some plans, each taken by itself and then all seen together. */
export interface Links {
  /** By cell: the cells that its formula names in any of the plans, in file order. */
  readonly reads: readonly (readonly number[])[];
  /** By cell: the cells whose formulas name it in any of the plans, in file order. */
  readonly feeds: readonly (readonly number[])[];
  /** By cell: the steps of the longest way to it in any plan; undefined where a circle lies in that way. */
  readonly depths: readonly (number | undefined)[];
  /** By cell: whether a number fills it in any of the plans. */
  readonly isInput: readonly boolean[];
}

function together(lists: readonly (readonly number[])[]): readonly number[] {
  const [only = []] = lists;
  if (lists.length === 1) return only;
  const all = new Set(lists.flat());
  return [...all].sort((a, b) => a - b);
}

function deepest(depths: readonly (number | undefined)[]): number | undefined {
  return depths.reduce((a, b) => (a === undefined || b === undefined ? undefined : Math.max(a, b)));
}

/** @param plans at least one, all of one model */
export function linksOf(plans: readonly Plan[]): Links {
  const reads = plans.map(({ contents }) => contents.map(readsOf));
  const ways = plans.map(({ structure }, p) => longestWays(reads[p] ?? [], structure.order));
  const cells = plans[0]?.contents ?? [];
  return {
    reads: cells.map((_cell, id) => together(reads.map((one) => one[id] ?? []))),
    feeds: cells.map((_cell, id) => together(plans.map(({ structure }) => structure.feeds[id] ?? []))),
    depths: cells.map((_cell, id) => deepest(ways.map((one) => one[id]))),
    isInput: cells.map((_cell, id) => isInputInAny(plans, id)),
  };
}

/** The links between some cells, by the cell that is named; a formula that names its own cell is left out. */
export function linksAmong(plans: readonly Plan[], links: Links, ids: ReadonlySet<number>): Link[] {
  return [...ids].flatMap((from) =>
    (links.feeds[from] ?? [])
      .filter((to) => to !== from && ids.has(to))
      .map((to) => {
        const holding = plans.map(({ contents }, p) => (readsOf(contents[to]).includes(from) ? p : -1));
        return { from, to, plans: holding.filter((p) => p !== -1) };
      }),
  );
}
