import { reach, readers } from './graph';
import type { Content } from './content';
import { compileSections, type Sections } from './sections';

/** The links between a plan's cells, which do not depend on its inputs' numbers; edits of numbers share it. */
export interface Structure {
  /** Every cell, each after all that it reads; cells in a circle are void and stand anywhere. */
  readonly order: readonly number[];
  /** By cell: its place in the order. */
  readonly places: readonly number[];
  /** By cell: the cells that read it. */
  readonly feeds: readonly (readonly number[])[];
  /** The formulas over float64, compiled when first asked for. */
  sections(): Sections;
  /**
   * The cells between some inputs and a result, both included, in the order in which they compute; empty where no input
   * feeds it.
   */
  route(from: readonly number[], result: number): readonly number[];
}

/** The structure of a plan from what fills its cells. */
export function structureOf(contents: readonly Content[], order: readonly number[]): Structure {
  const reads = contents.map((content) => (content.kind === 'input' ? [] : content.reads));
  const feeds = readers(reads);
  const places = order.map(() => 0);
  order.forEach((id, place) => {
    places[id] = place;
  });
  const routes = new Map<number | string, readonly number[]>();
  const sourcesOf = new Map<number, ReadonlySet<number>>();
  const findRoute = (from: readonly number[], result: number): readonly number[] => {
    const sources = sourcesOf.get(result) ?? reach([result], reads);
    sourcesOf.set(result, sources);
    const route = inOrder({ order, places }, reach(from, feeds)).filter((id) => sources.has(id));
    return route.includes(result) ? route : [];
  };
  let sections: Sections | undefined;
  return {
    order,
    places,
    feeds,
    sections: () => (sections ??= compileSections(contents, order)),
    route: (from, result) => {
      const [first = 0] = from;
      const key = from.length === 1 ? first * order.length + result : `${result}<${from.join()}`;
      const route = routes.get(key) ?? findRoute(from, result);
      routes.set(key, route);
      return route;
    },
  };
}

/** Some cells in the order in which they compute. */
export function inOrder({ order, places }: Pick<Structure, 'order' | 'places'>, ids: ReadonlySet<number>): number[] {
  if (ids.size * 8 > order.length) return order.filter((id) => ids.has(id));
  return [...ids].sort((a, b) => (places[a] ?? 0) - (places[b] ?? 0));
}
