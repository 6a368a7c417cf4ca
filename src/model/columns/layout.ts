import { columnStep, type ColumnStep } from './steps';
import type { ValueNode } from './valueGraph';

type Column = Float64Array;

/** A pool of columns of one length, to be used again. */
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

/** The steps that compute some nodes in order, and the columns that hold their values afterwards. */
export interface ColumnLayout {
  readonly steps: readonly ColumnStep[];
  /** The column of each node. Unless the node was among `kept`, a later step may have overwritten it. */
  readonly columns: ReadonlyMap<number, Column>;
}

/** For each node, the last node that reads it. */
function lastReads(nodes: readonly ValueNode[], order: readonly number[]): Map<number, number> {
  const last = new Map<number, number>();
  for (const place of order) {
    const node = nodes[place] as ValueNode;
    if (node.kind === 'made') for (const arg of node.args) last.set(arg, place);
  }
  return last;
}

/**
 * Assigns a column to each node and makes the steps that compute them.
 * @param order the nodes to compute, each after the nodes it is made from
 * @param known gives the column of a node that needs no computing
 * @param kept nodes whose columns must still hold their values after the last step; other columns are reused as soon as
 * nothing more reads them
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
