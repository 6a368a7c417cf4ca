import { float } from '../core/float';
import type { Checked } from './checked';
import type { FormulaFunction } from './function';
import { Op, wide, type Program } from './program';

const pairs: Readonly<Record<string, Op>> = {
  add: Op.Add,
  subtract: Op.Subtract,
  multiply: Op.Multiply,
  divide: Op.Divide,
  power: Op.Power,
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
  floor: Op.Floor,
  ceil: Op.Ceil,
};
const folds: Readonly<Record<string, Op>> = { min: Op.Smaller, max: Op.Larger };

/**
 * Writes checked formulas as one straight register program over float64. Registers 0 … cells-1 are the cells; constants
 * and intermediate values follow. Each formula is a section of its own, so that any of them can be run alone.
 */
export class ProgramWriter {
  readonly code: number[] = [];
  readonly functions: FormulaFunction[] = [];
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
    return this.code.push(op, target, a, b, c) - wide;
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
      case 'convert':
        this.convert(node, target);
        return;
      case 'negate':
      case 'not':
        this.emit(node.op === 'not' ? Op.Not : Op.Negate, target, this.register(node.of));
        return;
      case 'and':
      case 'or':
        this.early(node.left, node.right, node.op === 'or' ? Op.UnlessFalse : Op.UnlessTrue, target);
        return;
      case 'choose':
        this.choose(node, target);
        return;
      case 'call':
        this.call(node, target);
        return;
      default:
        this.pair(node, target);
    }
  }

  private pair(node: Extract<Checked, { left: Checked }>, target: number): void {
    if (node.op === 'power' && node.right.op === 'number' && node.right.text === '2') {
      this.emit(Op.Square, target, this.register(node.left));
      return;
    }
    this.emit(pairs[node.op] ?? Op.Move, target, this.register(node.left), this.register(node.right));
  }

  private convert({ of, by }: Checked & { op: 'convert' }, target: number): void {
    let from = this.register(of);
    if (by.over !== 1n) {
      this.emit(Op.Multiply, target, from, this.constant(Number(by.over)));
      from = target;
    }
    if (by.under !== 1n) this.emit(Op.Divide, target, from, this.constant(Number(by.under)));
  }

  private early(left: Checked, right: Checked, stop: Op, target: number): void {
    this.into(left, target);
    const jump = this.emit(stop, target, target);
    this.into(right, target);
    this.code[jump + 3] = this.code.length;
  }

  private choose({ test, yes, no }: Checked & { op: 'choose' }, target: number): void {
    const branch = this.emit(Op.Branch, target, this.register(test));
    this.into(yes, target);
    const jump = this.emit(Op.Jump, target);
    this.code[branch + 3] = this.code.length;
    this.into(no, target);
    this.code[branch + 4] = this.code.length;
    this.code[jump + 3] = this.code.length;
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
    const sources = args.map((arg) => this.register(arg));
    const from = this.registers;
    this.registers += args.length;
    sources.forEach((source, i) => this.emit(Op.Move, from + i, source));
    this.functions.push(fn);
    this.emit(Op.Call, target, from, this.functions.length - 1, args.length);
  }
}

/** What a writer has written, ready to run. */
export function compileProgram(writer: ProgramWriter): Program {
  const start = new Float64Array(writer.size).fill(NaN);
  for (const [register, value] of writer.constants) start[register] = value;
  return { code: Int32Array.from(writer.code), functions: writer.functions, registers: () => start.slice() };
}
