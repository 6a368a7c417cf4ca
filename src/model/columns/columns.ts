import { decimal, floatOf } from '../../core/number';
import type { Plan } from '../model';
import type { Values } from '../values';
import { formulaNodes } from './formulaNodes';
import { ColumnPool, layOut } from './layout';
import type { ColumnStep } from './steps';
import { ValueGraph, type ValueNode } from './valueGraph';

/** A cell of a plan, wanted for many draws of some inputs. */
export interface ColumnTarget {
  readonly plan: Plan;
  /** The plan's exact values today: what the inputs do not move keeps them. */
  readonly values: Values;
  readonly cell: number;
  /** Cells that move, each with the number of its input. */
  readonly moving: ReadonlyMap<number, number>;
}

/** Formulas over blocks of draws in float64. */
export interface Columns {
  /** Most draws of one run, a multiple of four. */
  readonly block: number;
  /** One column an input; to be filled before each run, which leaves them as they are. */
  readonly inputs: readonly Float64Array[];
  /** One column a target; NaN where it cannot be computed. */
  readonly results: readonly Float64Array[];
  /** Computes the results of the first so many draws. */
  run(count: number): void;
}

/** Columns that can be computed again with another column for one input, at the cost of what that input moves. */
export interface VariedColumns extends Columns {
  /**
   * The results of the last run's draws but for one input.
   * @returns one column a target, valid until the next call
   */
  vary(input: number, column: Float64Array, count: number): readonly Float64Array[];
}

const unknown = decimal(NaN);

/** Small enough for the columns in use to stay in near memory, large enough for the calls to cost nothing. */
const usualBlock = 512;

/** The formulas on the way from the moving cells to a target; returns the target's node. */
function targetNode(graph: ValueGraph, { plan, values, cell: wanted, moving }: ColumnTarget): number {
  const nodes = new Map([...moving].map(([cell, input]) => [cell, graph.input(input)]));
  const nodeOf = (cell: number): number => nodes.get(cell) ?? graph.constant(floatOf(values.numbers[cell] ?? unknown));
  for (const id of plan.structure.route([...moving.keys()], wanted)) {
    const content = plan.contents[id];
    if (content?.kind === 'calculated') nodes.set(id, formulaNodes(graph, content.node, nodeOf));
  }
  return nodeOf(wanted);
}

/** The nodes that results are made of, in order. */
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

/** The nodes of an order that an input moves. */
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

/** What both ways of compiling start from. */
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

  /** The column of a node that is not computed: an input's, or one number throughout. */
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
 * Makes the formulas on the way to some targets ready for many draws: what does not move is a number, what two formulas
 * or two plans compute alike is computed once, and columns are used again.
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

/** The same, ready to vary one input at a time. */
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
