import type { Grid } from './grid';

/** Whether the best result is the highest or the lowest. */
export type Way = 'highest' | 'lowest';

/** A node of a grid, by column and row. */
export interface Node {
  readonly i: number;
  readonly j: number;
}

/** The best node of a grid, and those that are just as good. */
export interface Best extends Node {
  readonly value: number;
  /** The others, row by row. */
  readonly ties: readonly Node[];
}

/** Results this near to one another, as a share of the best, are the same: float64's own rounding. */
const same = 1e-9;

/** How good a result is: the higher the better. */
function worth(value: number, way: Way): number {
  return way === 'highest' ? value : -value;
}

function nodes({ values }: Grid<number>): (Node & { readonly value: number })[] {
  return values.flatMap((row, j) => row.map((value, i) => ({ i, j, value })));
}

/**
 * The best result in a grid.
 * @param near of several equally good nodes, the one fewest columns and rows from here is taken
 * @returns undefined where no result can be computed
 */
export function bestOf(grid: Grid<number>, way: Way, near: Node): Best | undefined {
  const known = nodes(grid).filter(({ value }) => Number.isFinite(value));
  const top = known.reduce((most, { value }) => Math.max(most, worth(value, way)), -Infinity);
  const least = top - same * Math.abs(top);
  const far = ({ i, j }: Node): number => Math.abs(i - near.i) + Math.abs(j - near.j);
  const equal = known.filter(({ value }) => worth(value, way) >= least);
  const [first, ...rest] = equal.sort((a, b) => far(a) - far(b));
  if (first === undefined) return undefined;
  const inOrder = rest.sort((a, b) => a.j - b.j || a.i - b.i);
  return { ...first, ties: inOrder.map(({ i, j }) => ({ i, j })) };
}

/**
 * How flat a line of results is around the best one: indices of the first and the last place of the stretch that stays
 * near it.
 * @param at index of the best
 * @param share how much worse than the best a result may be, as a share of the best
 */
export function flatStretch(values: readonly number[], at: number, way: Way, share: number): readonly [number, number] {
  const best = values[at] ?? NaN;
  const least = worth(best, way) - share * Math.abs(best);
  const isNear = (k: number): boolean => worth(values[k] ?? NaN, way) >= least;
  let [from, to] = [at, at];
  while (isNear(from - 1)) from -= 1;
  while (isNear(to + 1)) to += 1;
  return [from, to];
}
