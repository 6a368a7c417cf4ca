import type { Checked } from '../../formula/checked';
import { isStep, rowOf, type RowStep } from '../../formula/row';
import type { ValueGraph } from './valueGraph';

/** Functions of many arguments that are computed as a chain of calls with two. */
const folding = new Set(['min', 'max']);

/**
 * Adds a checked formula to a graph, with operations in the same order as the register program.
 * @param cell gives the node of a cell that the formula names
 * @returns the node of the formula's value
 */
export function formulaNodes(graph: ValueGraph, formula: Checked, cell: (id: number) => number): number {
  const nodeOf = (node: Checked): number => {
    if (isStep(node)) {
      const { start, steps } = rowOf(node);
      return steps.reduce((value, step) => stepNode(graph, value, step, nodeOf), nodeOf(start));
    }
    switch (node.op) {
      case 'number':
        return graph.constant(Number(node.text));
      case 'cell':
        return cell(node.cell);
      case 'negate':
        return graph.made('multiply', [nodeOf(node.of), graph.constant(-1)]);
      case 'not':
        return graph.made('subtract', [graph.constant(1), nodeOf(node.of)]);
      case 'choose':
        return graph.made('choose', [nodeOf(node.test), nodeOf(node.yes), nodeOf(node.no)]);
      case 'call':
        return callNode(graph, node, node.args.map(nodeOf));
      default:
        return graph.made(node.op, [nodeOf(node.left), nodeOf(node.right)]);
    }
  };
  return nodeOf(formula);
}

function stepNode(graph: ValueGraph, value: number, step: RowStep, nodeOf: (node: Checked) => number): number {
  if (step.op !== 'convert') return graph.made(step.op, [value, nodeOf(step.right)]);
  const raised = graph.made('multiply', [value, graph.constant(Number(step.by.over))]);
  return graph.made('divide', [raised, graph.constant(Number(step.by.under))]);
}

function callNode(graph: ValueGraph, { fn }: Checked & { op: 'call' }, args: readonly number[]): number {
  const [first, ...others] = args;
  if (first === undefined || !folding.has(fn.name)) return graph.made('call', args, fn);
  return others.reduce((sum, other) => graph.made('call', [sum, other], fn), first);
}
