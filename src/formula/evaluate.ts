import { wording } from '../language/wording';
import type { Arithmetic } from '../core/arithmetic';
import type { Ratio } from '../core/ratio';
import type { Checked, Comparison, NumberOperation } from './checked';
import type { Reason } from './function';
import { rowOf, type RowStep } from './row';

/** What an evaluation reads and reports. */
export interface Evaluation<T> {
  readonly arithmetic: Arithmetic<T>;
  /** The value of a cell; NaN where it is not known. */
  cell(id: number): T;
  /** Called wherever a value cannot be computed from known ones; the first reason is the one to tell. */
  fail(reason: Reason): void;
}

const orders: Readonly<Record<Comparison, (order: number) => boolean>> = {
  less: (order) => order < 0,
  atMost: (order) => order <= 0,
  greater: (order) => order > 0,
  atLeast: (order) => order >= 0,
  equal: (order) => order === 0,
  unequal: (order) => order !== 0,
};

function isComparison(op: string): op is Comparison {
  return op in orders;
}

function operate<T>(m: Arithmetic<T>, op: NumberOperation, a: T, b: T): T {
  switch (op) {
    case 'add':
      return m.add(a, b);
    case 'subtract':
      return m.subtract(a, b);
    case 'multiply':
      return m.multiply(a, b);
    case 'divide':
      return m.divide(a, b);
    case 'power':
      return m.power(a, b);
  }
}

function operationReason(op: NumberOperation, a: number, b: number): Reason {
  if (op === 'divide' && b === 0) return { code: 'division-by-zero', message: wording`division by 0` };
  if (op === 'power' && a === 0) return { code: 'division-by-zero', message: wording`0 to a negative power` };
  if (op === 'power' && a < 0 && !Number.isInteger(b))
    return { code: 'domain', message: wording`a negative number to a power that is not whole` };
  return { code: 'overflow', message: wording`result too large` };
}

/** Whole numbers below this have at most 15 digits: an arithmetic takes them without reading a text. */
const longFrom = 10n ** 15n;

function factor<T>(m: Arithmetic<T>, n: bigint): T {
  return n < longFrom ? m.whole(Number(n)) : m.read(n.toString());
}

function convert<T>(m: Arithmetic<T>, value: T, { over, under }: Ratio): T {
  const raised = over === 1n ? value : m.multiply(value, factor(m, over));
  return under === 1n ? raised : m.divide(raised, factor(m, under));
}

/** One walk through a checked formula. Only the chosen arm of a choice is looked at; `and` and `or` stop early. */
class Walk<T> {
  private readonly m: Arithmetic<T>;

  constructor(private readonly evaluation: Evaluation<T>) {
    this.m = evaluation.arithmetic;
  }

  value(node: Checked): T {
    switch (node.op) {
      case 'number':
        return this.m.read(node.text);
      case 'cell':
        return this.evaluation.cell(node.cell);
      case 'convert':
      case 'add':
      case 'subtract':
      case 'multiply':
      case 'divide':
        return this.row(node);
      case 'negate':
        return this.m.negate(this.value(node.of));
      case 'not':
        return this.m.subtract(this.m.whole(1), this.value(node.of));
      case 'and':
      case 'or':
        return this.early(node.left, node.right, node.op === 'or');
      case 'choose':
        return this.chosen(node.test, node.yes, node.no);
      case 'call':
        return this.call(node);
      default:
        return isComparison(node.op)
          ? this.comparison(node.op, this.value(node.left), this.value(node.right))
          : this.operation(node.op, this.value(node.left), this.value(node.right));
    }
  }

  private row(node: Checked): T {
    const { start, steps } = rowOf(node);
    let value = this.value(start);
    for (const step of steps) value = this.step(value, step);
    return value;
  }

  private step(value: T, step: RowStep): T {
    if (step.op === 'convert') return convert(this.m, value, step.by);
    return this.operation(step.op, value, this.value(step.right));
  }

  private early(left: Checked, right: Checked, stopsAt: boolean): T {
    const first = this.value(left);
    if (!this.m.isKnown(first)) return this.m.whole(NaN);
    return (this.m.toNumber(first) === 1) === stopsAt ? first : this.value(right);
  }

  private chosen(test: Checked, yes: Checked, no: Checked): T {
    const condition = this.value(test);
    if (!this.m.isKnown(condition)) return this.m.whole(NaN);
    return this.value(this.m.toNumber(condition) === 1 ? yes : no);
  }

  private operation(op: NumberOperation, a: T, b: T): T {
    const m = this.m;
    if (!m.isKnown(a) || !m.isKnown(b)) return m.whole(NaN);
    const result = operate(m, op, a, b);
    if (!m.isKnown(result)) this.evaluation.fail(operationReason(op, m.toNumber(a), m.toNumber(b)));
    return result;
  }

  private comparison(op: Comparison, a: T, b: T): T {
    const m = this.m;
    if (!m.isKnown(a) || !m.isKnown(b)) return m.whole(NaN);
    return m.whole(orders[op](m.compare(a, b)) ? 1 : 0);
  }

  private call({ fn, args }: Checked & { op: 'call' }): T {
    const values = args.map((arg) => this.value(arg));
    if (!values.every((value) => this.m.isKnown(value))) return this.m.whole(NaN);
    const result = fn.compute(this.m, values);
    if (!this.m.isKnown(result)) this.evaluation.fail(fn.reason(values.map((value) => this.m.toNumber(value))));
    return result;
  }
}

/** The value of a checked formula in one arithmetic; truths are 1 and 0, what cannot be computed is NaN. */
export function evaluate<T>(node: Checked, evaluation: Evaluation<T>): T {
  return new Walk(evaluation).value(node);
}
