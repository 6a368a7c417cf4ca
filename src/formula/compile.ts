import { float } from '../core/float';
import type { Checked, Comparison } from './checked';
import type { FormulaFunction } from './function';
import { callOf, programHead, Op, Word, type Call, type Program } from './program';
import { rowOf, type Sign, type RowStep } from './row';

const signs: Readonly<Record<Sign, Op>> = {
  add: Op.Add,
  subtract: Op.Subtract,
  multiply: Op.Multiply,
  divide: Op.Divide,
};
/** Two signs in a row that are one operation. */
const pairs: Readonly<Record<string, Op>> = {
  'add add': Op.AddAdd,
  'add multiply': Op.AddMultiply,
  'add divide': Op.AddDivide,
  'multiply add': Op.MultiplyAdd,
  'multiply multiply': Op.MultiplyMultiply,
  'multiply divide': Op.MultiplyDivide,
  'divide multiply': Op.DivideMultiply,
  'divide divide': Op.DivideDivide,
};
const comparisons: Readonly<Record<Comparison, Op>> = {
  less: Op.Less,
  atMost: Op.AtMost,
  greater: Op.Greater,
  atLeast: Op.AtLeast,
  equal: Op.Equal,
  unequal: Op.Unequal,
};
const singles: Readonly<Record<string, Op>> = {
  abs: Op.Absolute,
  sqrt: Op.SquareRoot,
  exp: Op.Exponential,
  log: Op.Logarithm,
  log10: Op.Logarithm10,
  floor: Op.Floor,
  ceil: Op.Ceil,
};
const folds: Readonly<Record<string, Op>> = { min: Op.Smaller, max: Op.Larger };

type ComparisonNode = Extract<Checked, { left: Checked }> & { readonly op: Comparison };

function isComparison(node: Checked): node is ComparisonNode {
  return node.op in comparisons;
}

/** A sign with the register of the number to its right. */
interface SignBy {
  readonly sign: Sign;
  readonly by: number;
}

/**
 * Writes checked formulas as one straight register program over float64. Registers 0 … cells-1 are the cells; constants
 * and intermediate values follow. Each formula is a section of its own, so that any of them can be run alone.
 */
export class ProgramWriter {
  readonly code: number[] = [];
  readonly calls: Call[] = [];
  /** Registers that hold constants, with the constant. */
  readonly constants = new Map<number, number>();
  private readonly constantOf = new Map<number, number>();
  private registers: number;

  constructor(cells: number) {
    this.registers = cells;
  }

  get size(): number {
    return this.registers;
  }

  /** Appends a formula whose value goes to a register; returns where its section ends. */
  formula(node: Checked, target: number): number {
    this.into(node, target);
    return this.code.length;
  }

  private emit(op: Op, target: number, a = 0, b = 0, c = 0): number {
    return this.code.push(programHead(op, target), a, b, c) - Word.Count;
  }

  private temporary(): number {
    this.registers += 1;
    return this.registers - 1;
  }

  private constant(value: number): number {
    const known = this.constantOf.get(value);
    if (known !== undefined) return known;
    const register = this.temporary();
    this.constantOf.set(value, register);
    this.constants.set(register, value);
    return register;
  }

  /** The register that holds a part's value, computed into a new one where it is not a cell or constant. */
  private register(node: Checked): number {
    if (node.op === 'cell') return node.cell;
    if (node.op === 'number') return this.constant(float.read(node.text));
    const register = this.temporary();
    this.into(node, register);
    return register;
  }

  private into(node: Checked, target: number): void {
    switch (node.op) {
      case 'number':
      case 'cell':
        this.emit(Op.Move, target, this.register(node));
        return;
      case 'negate':
      case 'not':
        this.emit(node.op === 'not' ? Op.Not : Op.Negate, target, this.register(node.of));
        return;
      case 'and':
        this.and(node.left, node.right, target);
        return;
      case 'or':
        this.or(node.left, node.right, target);
        return;
      case 'choose':
        this.choose(node, target);
        return;
      case 'call':
        this.call(node, target);
        return;
      case 'power':
        this.power(node.left, node.right, target);
        return;
      case 'convert':
      case 'add':
      case 'subtract':
      case 'multiply':
      case 'divide':
        this.row(node, target);
        return;
      default:
        this.land(this.condition(node, target));
    }
  }

  private power(base: Checked, exponent: Checked, target: number): void {
    if (exponent.op === 'number' && exponent.text === '2') this.emit(Op.Square, target, this.register(base));
    else this.emit(Op.Power, target, this.register(base), this.register(exponent));
  }

  private row(node: Checked, target: number): void {
    const { start, steps } = rowOf(node);
    let from = this.register(start);
    const row = steps.flatMap((step) => this.signsOf(step));
    for (let i = 0; i < row.length; i += 1) {
      const { sign, by } = row[i]!;
      const next = row[i + 1];
      const pair = next && pairs[`${sign} ${next.sign}`];
      if (next === undefined || pair === undefined) this.emit(signs[sign], target, from, by);
      else {
        this.emit(pair, target, from, by, next.by);
        i += 1;
      }
      from = target;
    }
  }

  private signsOf(step: RowStep): SignBy[] {
    if (step.op !== 'convert') return [{ sign: step.op, by: this.register(step.right) }];
    const row: SignBy[] = [];
    const { over, under } = step.by;
    if (over !== 1n) row.push({ sign: 'multiply', by: this.constant(Number(over)) });
    if (under !== 1n) row.push({ sign: 'divide', by: this.constant(Number(under)) });
    return row;
  }

  /** Lets a jump go to the instruction that is written next. */
  private land(jump: number): void {
    this.code[jump + Word.C] = this.code.length;
  }

  /** Writes a comparison into a register; returns the jump that is taken unless it holds. */
  private compare({ op, left, right }: ComparisonNode, target: number): number {
    return this.emit(comparisons[op], target, this.register(left), this.register(right));
  }

  /** The same for any condition. */
  private condition(node: Checked, register: number): number {
    if (isComparison(node)) return this.compare(node, register);
    if (node.op !== 'cell' || node.cell !== register) this.into(node, register);
    return this.emit(Op.UnlessTrue, register, register);
  }

  private and(left: Checked, right: Checked, target: number): void {
    const jump = this.condition(left, target);
    this.into(right, target);
    this.land(jump);
  }

  private or(left: Checked, right: Checked, target: number): void {
    this.into(left, target);
    const jump = this.emit(Op.UnlessFalse, target, target);
    this.into(right, target);
    this.land(jump);
  }

  private choose({ test, yes, no }: Checked & { op: 'choose' }, target: number): void {
    const condition = test.op === 'cell' ? test.cell : this.temporary();
    const toNo = this.condition(test, condition);
    this.into(yes, target);
    const toEnd = this.emit(Op.Jump, target);
    this.land(toNo);
    const unknown = this.emit(Op.WhereUnknown, target, condition);
    this.into(no, target);
    this.land(toEnd);
    this.land(unknown);
  }

  private call({ fn, args }: Checked & { op: 'call' }, target: number): void {
    const single = singles[fn.name];
    const fold = folds[fn.name];
    const [first, ...others] = args;
    if (first !== undefined && single !== undefined) this.emit(single, target, this.register(first));
    else if (first !== undefined && fold !== undefined) this.fold(fold, first, others, target);
    else this.callRecord(fn, args, target);
  }

  private fold(op: Op, first: Checked, others: readonly Checked[], target: number): void {
    const registers = others.map((other) => this.register(other));
    let from = this.register(first);
    if (registers.length === 0) this.emit(Op.Move, target, from);
    for (const register of registers) {
      this.emit(op, target, from, register);
      from = target;
    }
  }

  private callRecord(fn: FormulaFunction, args: readonly Checked[], target: number): void {
    const from = args.map((arg) => this.register(arg));
    this.calls.push(callOf(fn, from));
    this.emit(Op.Call, target, 0, 0, this.calls.length - 1);
  }
}

/** What a writer has written, ready to run. */
export function compileProgram(writer: ProgramWriter): Program {
  const start = new Float64Array(writer.size).fill(NaN);
  for (const [register, value] of writer.constants) start[register] = value;
  return { code: Int32Array.from(writer.code), calls: writer.calls, registers: () => start.slice() };
}
