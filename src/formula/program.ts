import { ceilFloat, finite, float, floorFloat, powerFloat, largestSummand } from '../core/float';
import type { FormulaFunction } from './function';

/** Operations of a register program. */
export const enum Op {
  Move,
  Add,
  Subtract,
  Multiply,
  Divide,
  /** Two signs in a row: a + b + c, (a + b) * c and so on; here c is a register as well. */
  AddAdd,
  AddMultiply,
  AddDivide,
  MultiplyAdd,
  MultiplyMultiply,
  MultiplyDivide,
  DivideMultiply,
  DivideDivide,
  Power,
  Square,
  Negate,
  Not,
  /** Comparisons give 1 or 0, and go to c unless they hold. */
  Less,
  AtMost,
  Greater,
  AtLeast,
  Equal,
  Unequal,
  /** Goes to c. */
  Jump,
  /** Goes to c unless a is 1. */
  UnlessTrue,
  /** Goes to c unless a is 0. */
  UnlessFalse,
  /** Where a is not known: makes the target so and goes to c. */
  WhereUnknown,
  Absolute,
  Smaller,
  Larger,
  SquareRoot,
  Exponential,
  Logarithm,
  Logarithm10,
  Floor,
  Ceil,
  /** Makes call number c. */
  Call,
}

/** The words of an instruction. */
export const enum Word {
  /** The operation in the lowest bits, the target register above them. */
  Head,
  /** A register. */
  A,
  /** A register. */
  B,
  /** What the operation says. */
  C,
  Count,
}

/** Bits of an instruction's head that hold the operation, and what masks them. */
const operationBits = 6;
const operationMask = 63;

export function programHead(op: Op, target: number): number {
  return op | (target << operationBits);
}

/** A call of a function over float64. */
export interface Call {
  readonly compute: (args: readonly number[]) => number;
  /** The registers that hold its arguments. */
  readonly from: readonly number[];
  /** Scratch for their values; it holds nothing from one call to the next. */
  readonly values: number[];
}

export function callOf(fn: FormulaFunction, from: readonly number[]): Call {
  return { compute: (args) => fn.compute(float, args), from, values: from.map(() => NaN) };
}

/** A register program over float64: `evaluate`'s results, some hundred times faster. */
export interface Program {
  readonly code: Int32Array;
  readonly calls: readonly Call[];
  /** A fresh set of registers: constants in place, cells not yet known. */
  registers(): Float64Array;
}

function call({ compute, from, values }: Call, r: Float64Array): number {
  for (let i = 0; i < values.length; i += 1) {
    const value = r[from[i]!]!;
    if (value !== value) return value;
    values[i] = value;
  }
  return finite(compute(values));
}

/** Runs an instruction that is rare or long, or calls something. */
function runRare({ code, calls }: Program, r: Float64Array, at: number): void {
  const head = code[at]!;
  const target = head >>> operationBits;
  const a = r[code[at + Word.A]!]!;
  const b = r[code[at + Word.B]!]!;
  // eslint-disable-next-line @typescript-eslint/no-unsafe-enum-assignment -- the writer puts only operations here
  const op: Op = head & operationMask;
  // prettier-ignore
  switch (op) {
    case Op.Power: r[target] = powerFloat(a, b); break;
    case Op.Exponential: r[target] = finite(Math.exp(a)); break;
    case Op.Logarithm: r[target] = finite(Math.log(a)); break;
    case Op.Logarithm10: r[target] = finite(Math.log10(a)); break;
    case Op.Floor: r[target] = floorFloat(a); break;
    default: r[target] = call(calls[code[at + Word.C]!]!, r);
  }
}

/**
 * Runs instructions from `start` up to `end`, or up to the first that is one of `runRare`; returns where it stopped.
 *
 * Written for the optimiser: nothing in the loop but what is compiled into it, and both arrays looked at before it, so
 * that it need not look again what they are; a and b are registers in every instruction, so that no read leaves the
 * registers and turns numbers into objects; `| 0` keeps places machine integers; the last word is read only where it is
 * needed.
 */
function runCommon(code: Int32Array, r: Float64Array, start: number, end: number): number {
  if (end > code.length || r.length === 0) throw new Error('a section outside its program');
  const stop = end | 0;
  let at = start | 0;
  while (at < stop) {
    const from = at;
    at = (at + Word.Count) | 0;
    const head = code[from]!;
    const target = head >>> operationBits;
    const a = r[code[(from + Word.A) | 0]!]!;
    const b = r[code[(from + Word.B) | 0]!]!;
    const last = (from + Word.C) | 0;
    let holds: boolean;
    // eslint-disable-next-line @typescript-eslint/no-unsafe-enum-assignment -- the writer puts only operations here
    const op: Op = head & operationMask;
    // prettier-ignore
    switch (op) {
      case Op.Move: r[target] = a; continue;
      case Op.Add: r[target] = finite(a + b); continue;
      case Op.Subtract: r[target] = finite(a - b); continue;
      case Op.Multiply: r[target] = finite(a * b); continue;
      case Op.Divide: r[target] = finite(a / b); continue;
      case Op.AddAdd: r[target] = finite(a + b + r[code[last]!]!); continue;
      case Op.AddMultiply: r[target] = finite((a + b) * r[code[last]!]!); continue;
      case Op.AddDivide: r[target] = finite((a + b) / r[code[last]!]!); continue;
      case Op.MultiplyAdd: r[target] = finite(a * b + r[code[last]!]!); continue;
      case Op.MultiplyMultiply: r[target] = finite(a * b * r[code[last]!]!); continue;
      case Op.MultiplyDivide: r[target] = finite((a * b) / r[code[last]!]!); continue;
      case Op.DivideMultiply: r[target] = finite((a / b) * r[code[last]!]!); continue;
      case Op.DivideDivide: r[target] = finite(a / b / r[code[last]!]!); continue;
      case Op.Square: r[target] = finite(a * a); continue;
      case Op.Negate: r[target] = -a; continue;
      case Op.Not: r[target] = 1 - a; continue;
      case Op.Less: holds = b - a > largestSummand(a, b); break;
      case Op.AtMost: holds = a - b <= largestSummand(a, b); break;
      case Op.Greater: holds = a - b > largestSummand(a, b); break;
      case Op.AtLeast: holds = b - a <= largestSummand(a, b); break;
      case Op.Equal: holds = Math.abs(a - b) <= largestSummand(a, b); break;
      case Op.Unequal: holds = Math.abs(a - b) > largestSummand(a, b); break;
      case Op.Jump: at = code[last]!; continue;
      case Op.UnlessTrue: if (a !== 1) at = code[last]!; continue;
      case Op.UnlessFalse: if (a !== 0) at = code[last]!; continue;
      case Op.WhereUnknown: if (a !== a) { r[target] = a; at = code[last]!; } continue;
      case Op.Absolute: r[target] = Math.abs(a); continue;
      case Op.Smaller: r[target] = Math.min(a, b); continue;
      case Op.Larger: r[target] = Math.max(a, b); continue;
      case Op.SquareRoot: r[target] = Math.sqrt(a); continue;
      case Op.Ceil: r[target] = ceilFloat(a); continue;
      default: return from;
    }
    r[target] = holds ? 1 : a - a + (b - b);
    if (!holds) at = code[last]!;
  }
  return at;
}

/** Runs the instructions from `start` up to `end` on a set of registers; what cannot be computed is NaN. */
export function run(program: Program, r: Float64Array, start: number, end: number): void {
  let at = runCommon(program.code, r, start, end);
  while (at < end) {
    runRare(program, r, at);
    at = runCommon(program.code, r, at + Word.Count, end);
  }
}
