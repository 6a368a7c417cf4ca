import { largestWholePower } from '../../core/elementary';
import { float } from '../../core/float';
import type { FormulaFunction } from '../../formula/function';
import { largestBatch } from '../../formula/wholeBatch';
import * as kernels from './kernels';
import { repeatable } from './repeatable';
import { scalarOf, truths, type Operation } from './scalars';

type Column = Float64Array;

/** Computes the first `count` values of one column. */
export type ColumnStep = (count: number) => void;

/** An operand: a column, and its number where that is the same for all draws. */
export interface Operand {
  readonly column: Column;
  readonly number: number | undefined;
}

type StepMaker = (out: Column, a: Operand, b: Operand) => ColumnStep;

const add: StepMaker = (out, a, b) => {
  const [{ column }, { number }] = a.number === undefined ? [a, b] : [b, a];
  if (number !== undefined) return (n) => kernels.addNumber(out, column, number, n);
  return (n) => kernels.add(out, a.column, b.column, n);
};

const subtract: StepMaker = (out, { column, number: from }, { column: lessColumn, number: less }) => {
  if (less !== undefined) return (n) => kernels.addNumber(out, column, -less, n);
  if (from !== undefined) return (n) => kernels.subtractFrom(out, from, lessColumn, n);
  return (n) => kernels.subtract(out, column, lessColumn, n);
};

const multiply: StepMaker = (out, a, b) => {
  const [{ column }, { number }] = a.number === undefined ? [a, b] : [b, a];
  if (number !== undefined) return (n) => kernels.multiplyNumber(out, column, number, n);
  return (n) => kernels.multiplyColumns(out, a.column, b.column, n);
};

const divide: StepMaker = (out, { column, number: over }, { column: underColumn, number: under }) => {
  if (under !== undefined && Math.abs(under) >= 1) return (n) => kernels.divideByNumber(out, column, under, n);
  if (over !== undefined) return (n) => kernels.divideNumberBy(out, over, underColumn, n);
  return (n) => kernels.divideColumns(out, column, underColumn, n);
};

const power: StepMaker = (out, { column }, { column: exponents, number }) => {
  if (number === 2) return (n) => kernels.multiplyColumns(out, column, column, n);
  if (number !== undefined && number !== 0 && Number.isInteger(number) && Math.abs(number) <= largestWholePower) {
    return (n) => kernels.wholePowers(out, column, number, n);
  }
  return (n) => {
    for (let i = 0; i < n; i += 1) out[i] = repeatable.power(column[i]!, exponents[i]!);
  };
};

function comparison(sign: keyof typeof truths): StepMaker {
  return (out, a, b) => (n) => kernels.compare(out, a.column, b.column, truths[sign], n);
}

function early(goesOn: number): StepMaker {
  return (out, a, b) => (n) => kernels.early(out, a.column, b.column, goesOn, n);
}

const makers: Readonly<Record<Exclude<Operation, 'choose' | 'call'>, StepMaker>> = {
  add,
  subtract,
  multiply,
  divide,
  power,
  less: comparison('less'),
  atMost: comparison('atMost'),
  greater: comparison('greater'),
  atLeast: comparison('atLeast'),
  equal: comparison('equal'),
  unequal: comparison('unequal'),
  and: early(1),
  or: early(0),
};

type SingleKernel = (out: Column, a: Column, n: number) => void;

function mapping(f: (x: number) => number): SingleKernel {
  return (out, a, n) => kernels.mapped(out, a, f, n);
}

const singles: ReadonlyMap<string, SingleKernel> = new Map([
  ['floor', kernels.floor],
  ['ceil', kernels.ceil],
  ['abs', mapping(Math.abs)],
  ['sqrt', mapping(Math.sqrt)],
  ['exp', mapping((x) => repeatable.exponential(x))],
  ['log', mapping((x) => repeatable.logarithm(x))],
  ['log10', mapping((x) => repeatable.logarithm10(x))],
]);

const smaller: StepMaker = (out, a, b) => {
  const [{ column }, { number }] = a.number === undefined ? [a, b] : [b, a];
  if (number !== undefined) return (n) => kernels.smallerNumber(out, column, number, n);
  return (n) => kernels.smaller(out, a.column, b.column, n);
};

const larger: StepMaker = (out, a, b) => {
  const [{ column }, { number }] = a.number === undefined ? [a, b] : [b, a];
  if (number !== undefined) return (n) => kernels.largerNumber(out, column, number, n);
  return (n) => kernels.larger(out, a.column, b.column, n);
};

const pairs: ReadonlyMap<string, StepMaker> = new Map([
  ['min', smaller],
  ['max', larger],
]);

/** Calls a function value by value through the record that defines it. */
function byRecord(out: Column, operands: readonly Operand[], fn: FormulaFunction): ColumnStep {
  const compute = scalarOf('call', fn);
  const args = operands.map(() => NaN);
  return (n) => {
    for (let i = 0; i < n; i += 1) {
      for (let k = 0; k < args.length; k += 1) args[k] = operands[k]!.column[i]!;
      out[i] = compute(args);
    }
  };
}

/** The same for `whole_batch`, without the record: where it occurs it takes most of the time. */
function wholeBatches(out: Column, operands: readonly Operand[]): ColumnStep {
  const columns = operands.map(({ column }) => column);
  const args = operands.map(() => NaN);
  return (n) => {
    for (let i = 0; i < n; i += 1) {
      let sum = 0;
      for (let k = 0; k < args.length; k += 1) sum += args[k] = columns[k]![i]!;
      out[i] = sum === sum ? largestBatch(float, args) : NaN;
    }
  };
}

function callStep(out: Column, operands: readonly Operand[], fn: FormulaFunction): ColumnStep {
  const [a, b] = operands;
  const single = singles.get(fn.name);
  const pair = pairs.get(fn.name);
  if (single && a) return (n) => single(out, a.column, n);
  if (pair && a && b) return pair(out, a, b);
  return fn.name === 'whole_batch' ? wholeBatches(out, operands) : byRecord(out, operands, fn);
}

/** The step that computes one operation into its column. */
export function columnStep(
  out: Column,
  op: Operation,
  operands: readonly Operand[],
  fn: FormulaFunction | undefined,
): ColumnStep {
  const [a, b, c] = operands;
  if (op === 'call' && fn) return callStep(out, operands, fn);
  if (op === 'choose' && a && b && c) return (n) => kernels.choose(out, a.column, b.column, c.column, n);
  if (op !== 'call' && op !== 'choose' && a && b) return makers[op](out, a, b);
  throw new Error(`operation without its operands: ${op}`);
}
