import { columnStep, type ColumnStep } from './steps';
import type { ValueNode } from './valueGraph';

type Column = Float64Array;

/** Columns of one length, taken and given back. */
export class ColumnPool {
  private readonly made: Column[] = [];
  private free: Column[] = [];

  constructor(private readonly block: number) {}

  take(): Column {
    const free = this.free.pop();
    if (free !== undefined) return free;
    const column = new Float64Array(this.block);
    this.made.push(column);
    return column;
  }

  /** Takes every column back. */
  reset(): void {
    this.free = [...this.made];
  }

  give(column: Column): void {
    this.free.push(column);
  }
}

/** Steps that compute some nodes, in order, and where they leave them. */
export interface ColumnLayout {
  readonly steps: readonly ColumnStep[];
  /** By node: its column, valid after the steps unless it was used again. */
  readonly columns: ReadonlyMap<number, Column>;
}

/** Where each node is last read. */
function lastReads(nodes: readonly ValueNode[], order: readonly number[]): Map<number, number> {
  const last = new Map<number, number>();
  for (const place of order) {
    const node = nodes[place] as ValueNode;
    if (node.kind === 'made') for (const arg of node.args) last.set(arg, place);
  }
  return last;
}

/**
 * Lays nodes out in columns.
 * @param order the nodes to compute, each after those of them that it is made of
 * @param known columns of nodes that are there already
 * @param kept nodes whose columns must outlive the steps; the others' are used again once nothing reads them any more
 */
export function layOut(
  nodes: readonly ValueNode[],
  order: readonly number[],
  known: (place: number) => Column,
  kept: ReadonlySet<number>,
  pool: ColumnPool,
): ColumnLayout {
  const columns = new Map<number, Column>();
  const steps: ColumnStep[] = [];
  const last = lastReads(nodes, order);
  for (const place of order) {
    const node = nodes[place] as ValueNode;
    if (node.kind !== 'made') continue;
    const operands = node.args.map((arg) => {
      const made = nodes[arg] as ValueNode;
      const column = columns.get(arg) ?? known(arg);
      return { column, number: made.kind === 'constant' ? made.value : undefined };
    });
    for (const arg of new Set(node.args)) {
      const column = columns.get(arg);
      if (column !== undefined && last.get(arg) === place && !kept.has(arg)) pool.give(column);
    }
    const out = pool.take();
    columns.set(place, out);
    steps.push(columnStep(out, node.op, operands, node.fn));
  }
  return { steps, columns };
}
