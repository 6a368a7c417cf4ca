import { decimal, floatOf } from '../../core/number';
import type { Plan } from '../model';
import type { Values } from '../values';
import { formulaNodes } from './formulaNodes';
import { ColumnPool, layOut } from './layout';
import type { ColumnStep } from './steps';
import { ValueGraph, type ValueNode } from './valueGraph';

/** A cell of a plan whose value is wanted for many draws of some inputs. */
export interface ColumnTarget {
  readonly plan: Plan;
  /** The plan's exact values today; cells that the inputs do not move keep them. */
  readonly values: Values;
  readonly cell: number;
  /** The cells that move, each with the index of the input that moves it. */
  readonly moving: ReadonlyMap<number, number>;
}

/** Formulas compiled to compute a block of draws at a time in float64, each value as a column. */
export interface Columns {
  /** The largest number of draws in one run, a multiple of four. */
  readonly block: number;
  /** One column for each input, filled by the caller before each run; a run does not change them. */
  readonly inputs: readonly Float64Array[];
  /** One column for each target; NaN where it cannot be computed. */
  readonly results: readonly Float64Array[];
  /** Computes the results of the first `count` draws. */
  run(count: number): void;
}

/** Columns that can also recompute the results with one input changed, computing only what that input moves. */
export interface VariedColumns extends Columns {
  /**
   * The results of the last run's draws with one input taken from another column.
   * @returns one column for each target, valid until the next call
   */
  vary(input: number, column: Float64Array, count: number): readonly Float64Array[];
}

const unknown = decimal(NaN);

/** Small enough for the columns in use to stay in the processor's cache, large enough for the calls to cost nothing. */
const usualBlock = 512;

/** Adds the formulas between the moving cells and a target to the graph; returns the target's node. */
function targetNode(graph: ValueGraph, { plan, values, cell: wanted, moving }: ColumnTarget): number {
  const nodes = new Map([...moving].map(([cell, input]) => [cell, graph.input(input)]));
  const nodeOf = (cell: number): number => nodes.get(cell) ?? graph.constant(floatOf(values.numbers[cell] ?? unknown));
  for (const id of plan.structure.route([...moving.keys()], wanted)) {
    const content = plan.contents[id];
    if (content?.kind === 'calculated') nodes.set(id, formulaNodes(graph, content.node, nodeOf));
  }
  return nodeOf(wanted);
}

/** The nodes from which results are computed, in the order of the graph. */
function needed(nodes: readonly ValueNode[], results: readonly number[]): number[] {
  const found = new Set<number>();
  const stack = [...results];
  for (let place = stack.pop(); place !== undefined; place = stack.pop()) {
    if (found.has(place)) continue;
    found.add(place);
    const node = nodes[place];
    if (node?.kind === 'made') stack.push(...node.args);
  }
  return [...found].sort((a, b) => a - b);
}

/** The nodes of `order` whose value depends on an input. */
function movedBy(nodes: readonly ValueNode[], order: readonly number[], input: number): number[] {
  const moved = new Set<number>();
  for (const place of order) {
    const node = nodes[place] as ValueNode;
    const moves =
      node.kind === 'input' ? node.input === input : node.kind === 'made' && node.args.some((arg) => moved.has(arg));
    if (moves) moved.add(place);
  }
  return [...moved];
}

/** What `compileColumns` and `compileVaried` both start from. */
class Ground {
  readonly nodes: readonly ValueNode[];
  readonly results: readonly number[];
  readonly order: readonly number[];
  readonly inputs: readonly Float64Array[];
  private readonly constants = new Map<number, Float64Array>();

  constructor(
    targets: readonly ColumnTarget[],
    inputs: number,
    private readonly block: number,
  ) {
    const graph = new ValueGraph();
    this.results = targets.map((target) => targetNode(graph, target));
    this.nodes = graph.nodes;
    this.order = needed(graph.nodes, this.results);
    this.inputs = Array.from({ length: inputs }, () => new Float64Array(block));
  }

  /** The column of a node that needs no computing: an input's column, or one filled with a constant. */
  given(place: number): Float64Array {
    const node = this.nodes[place] as ValueNode;
    if (node.kind === 'input') return this.inputs[node.input] as Float64Array;
    const known = this.constants.get(place);
    if (known !== undefined) return known;
    const column = new Float64Array(this.block).fill(node.kind === 'constant' ? node.value : NaN);
    this.constants.set(place, column);
    return column;
  }
}

function runSteps(steps: readonly ColumnStep[]): (count: number) => void {
  return (count) => {
    for (const step of steps) step(count);
  };
}

/**
 * Compiles the formulas that some targets need for many draws. A value that no input moves becomes a constant, equal
 * parts of formulas, also of two plans, are computed once, and columns are reused.
 * @param inputs how many inputs there are
 */
export function compileColumns(targets: readonly ColumnTarget[], inputs: number, block = usualBlock): Columns {
  const ground = new Ground(targets, inputs, block);
  const { nodes, order, results } = ground;
  const given = (place: number): Float64Array => ground.given(place);
  const { steps, columns } = layOut(nodes, order, given, new Set(results), new ColumnPool(block));
  return {
    block,
    inputs: ground.inputs,
    results: results.map((place) => columns.get(place) ?? given(place)),
    run: runSteps(steps),
  };
}

/** The same, with one input at a time open to change. */
export function compileVaried(targets: readonly ColumnTarget[], inputs: number, block = usualBlock): VariedColumns {
  const ground = new Ground(targets, inputs, block);
  const { nodes, order, results } = ground;
  const base = layOut(nodes, order, (place) => ground.given(place), new Set(order), new ColumnPool(block));
  const standing = (place: number): Float64Array => base.columns.get(place) ?? ground.given(place);
  const replaced = new Float64Array(block);
  const pool = new ColumnPool(block);
  const variations = ground.inputs.map((_, input) => {
    const known = (place: number): Float64Array => {
      const node = nodes[place];
      return node?.kind === 'input' && node.input === input ? replaced : standing(place);
    };
    pool.reset();
    const { steps, columns } = layOut(nodes, movedBy(nodes, order, input), known, new Set(results), pool);
    return { run: runSteps(steps), results: results.map((place) => columns.get(place) ?? known(place)) };
  });
  return {
    block,
    inputs: ground.inputs,
    results: results.map(standing),
    run: runSteps(base.steps),
    vary: (input, column, count) => {
      const variation = variations[input] as (typeof variations)[number];
      replaced.set(column);
      variation.run(count);
      return variation.results;
    },
  };
}
