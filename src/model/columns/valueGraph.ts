import type { FormulaFunction } from '../../formula/function';
import { scalarOf, type Operation } from './scalars';

/** A value of the graph: a constant, an input's column, or an operation on values before it. */
export type ValueNode =
  | { readonly kind: 'constant'; readonly value: number }
  | { readonly kind: 'input'; readonly input: number }
  | {
      readonly kind: 'made';
      readonly op: Operation;
      readonly args: readonly number[];
      /** The function of a `call`. */
      readonly fn: FormulaFunction | undefined;
    };

/**
 * The values that formulas compute, each once: equal operations on equal values share a node, and an operation on
 * constants becomes a constant. A node is named by its index, and comes after the nodes that it is made from.
 */
export class ValueGraph {
  readonly nodes: ValueNode[] = [];
  private readonly places = new Map<string, number>();

  constant(value: number): number {
    return this.place(`${Object.is(value, -0) ? '-0' : value}`, { kind: 'constant', value });
  }

  input(input: number): number {
    return this.place(`input ${input}`, { kind: 'input', input });
  }

  made(op: Operation, args: readonly number[], fn?: FormulaFunction): number {
    const values = args.map((arg) => this.valueOf(arg));
    const known = this.reduced(op, args, values);
    if (known !== undefined) return known;
    if (values.every((value) => value !== undefined)) return this.constant(scalarOf(op, fn)(values));
    return this.place(`${op} ${fn?.name ?? ''} ${args.join(' ')}`, { kind: 'made', op, args, fn });
  }

  /** The number of a constant node; undefined for any other node. */
  valueOf(place: number): number | undefined {
    const node = this.nodes[place];
    return node?.kind === 'constant' ? node.value : undefined;
  }

  private place(key: string, node: ValueNode): number {
    const known = this.places.get(key);
    if (known !== undefined) return known;
    this.nodes.push(node);
    this.places.set(key, this.nodes.length - 1);
    return this.nodes.length - 1;
  }

  /** An existing node that has the operation's value bit for bit, such as the chosen arm or the other factor of 1. */
  private reduced(op: Operation, args: readonly number[], values: readonly (number | undefined)[]): number | undefined {
    const [left, right] = values;
    if (op === 'multiply' && left === 1) return args[1];
    if ((op === 'multiply' || op === 'divide' || op === 'power') && right === 1) return args[0];
    if (op === 'and' && left !== undefined) return left === 1 ? args[1] : args[0];
    if (op === 'or' && left !== undefined) return left === 0 ? args[1] : args[0];
    if (op === 'choose' && left !== undefined) return this.arm(left, args);
    return undefined;
  }

  private arm(test: number, args: readonly number[]): number | undefined {
    return test === test ? args[test === 1 ? 1 : 2] : this.constant(NaN);
  }
}
