import { ceilFloat, exceedsFloat, finite, float, floorFloat, powerFloat, tiesFloat } from '../core/float';
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

/** The words of an instruction. Target, a and b are registers; c is what the operation says. */
export const enum Word {
  Operation,
  Target,
  A,
  B,
  C,
  Count,
}

/** A call of a function with the registers that hold its arguments. */
export interface Call {
  readonly fn: FormulaFunction;
  readonly args: readonly number[];
}

/** A register program over float64: `evaluate`'s results, some hundred times faster. */
export interface Program {
  readonly code: Int32Array;
  readonly calls: readonly Call[];
  /** A fresh set of registers: constants in place, cells not yet known. */
  registers(): Float64Array;
}

/** What a comparison of two numbers gives: 1, 0, or NaN where one of them is not known. */
function truth(holds: boolean, a: number, b: number): number {
  if (a !== a) return a;
  if (b !== b) return b;
  return holds ? 1 : 0;
}

function call({ fn, args }: Call, r: Float64Array): number {
  const values = new Array<number>(args.length);
  for (let i = 0; i < args.length; i += 1) {
    const value = r[args[i]!]!;
    if (value !== value) return value;
    values[i] = value;
  }
  return finite(fn.compute(float, values));
}

/**
 * Runs the instructions from `start` up to `end` on a set of registers; what cannot be computed is NaN.
 *
 * Written for the optimiser: a and b are registers in every instruction, so that no read leaves the registers and turns
 * numbers into objects; `| 0` keeps places machine integers.
 */
export function run({ code, calls }: Program, r: Float64Array, start: number, end: number): void {
  const stop = end | 0;
  let at = start | 0;
  while (at < stop) {
    const target = code[(at + Word.Target) | 0]!;
    const a = r[code[(at + Word.A) | 0]!]!;
    const b = r[code[(at + Word.B) | 0]!]!;
    const c = code[(at + Word.C) | 0]!;
    let next = (at + Word.Count) | 0;
    // eslint-disable-next-line @typescript-eslint/no-unsafe-enum-assignment -- the writer puts only operations here
    const op: Op = code[at]!;
    // prettier-ignore
    switch (op) {
      case Op.Move: r[target] = a; break;
      case Op.Add: r[target] = finite(a + b); break;
      case Op.Subtract: r[target] = finite(a - b); break;
      case Op.Multiply: r[target] = finite(a * b); break;
      case Op.Divide: r[target] = finite(a / b); break;
      case Op.AddAdd: r[target] = finite(a + b + r[c]!); break;
      case Op.AddMultiply: r[target] = finite((a + b) * r[c]!); break;
      case Op.AddDivide: r[target] = finite((a + b) / r[c]!); break;
      case Op.MultiplyAdd: r[target] = finite(a * b + r[c]!); break;
      case Op.MultiplyMultiply: r[target] = finite(a * b * r[c]!); break;
      case Op.MultiplyDivide: r[target] = finite((a * b) / r[c]!); break;
      case Op.DivideMultiply: r[target] = finite((a / b) * r[c]!); break;
      case Op.DivideDivide: r[target] = finite(a / b / r[c]!); break;
      case Op.Power: r[target] = powerFloat(a, b); break;
      case Op.Square: r[target] = finite(a * a); break;
      case Op.Negate: r[target] = -a; break;
      case Op.Not: r[target] = 1 - a; break;
      case Op.Less: if ((r[target] = truth(exceedsFloat(b, a), a, b)) !== 1) next = c; break;
      case Op.AtMost: if ((r[target] = truth(!exceedsFloat(a, b), a, b)) !== 1) next = c; break;
      case Op.Greater: if ((r[target] = truth(exceedsFloat(a, b), a, b)) !== 1) next = c; break;
      case Op.AtLeast: if ((r[target] = truth(!exceedsFloat(b, a), a, b)) !== 1) next = c; break;
      case Op.Equal: if ((r[target] = truth(tiesFloat(a, b), a, b)) !== 1) next = c; break;
      case Op.Unequal: if ((r[target] = truth(!tiesFloat(a, b), a, b)) !== 1) next = c; break;
      case Op.Jump: next = c; break;
      case Op.UnlessTrue: if (a !== 1) next = c; break;
      case Op.UnlessFalse: if (a !== 0) next = c; break;
      case Op.WhereUnknown: if (a !== a) { r[target] = a; next = c; } break;
      case Op.Absolute: r[target] = Math.abs(a); break;
      case Op.Smaller: r[target] = Math.min(a, b); break;
      case Op.Larger: r[target] = Math.max(a, b); break;
      case Op.SquareRoot: r[target] = Math.sqrt(a); break;
      case Op.Exponential: r[target] = finite(Math.exp(a)); break;
      case Op.Logarithm: r[target] = finite(Math.log(a)); break;
      case Op.Logarithm10: r[target] = finite(Math.log10(a)); break;
      case Op.Floor: r[target] = floorFloat(a); break;
      case Op.Ceil: r[target] = ceilFloat(a); break;
      case Op.Call: r[target] = call(calls[c]!, r); break;
    }
    at = next;
  }
}
