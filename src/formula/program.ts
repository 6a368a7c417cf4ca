import { ceilFloat, compareFloat, divideFloat, float, floorFloat, powerFloat } from '../core/float';
import type { FormulaFunction } from './function';

/** Operations of a register program. */
export const enum Op {
  Move,
  Add,
  Subtract,
  Multiply,
  Divide,
  Power,
  Square,
  Negate,
  Not,
  Less,
  AtMost,
  Greater,
  AtLeast,
  Equal,
  Unequal,
  /** Goes on where `a` is 1, else jumps to `b`; an unknown `a` makes the target NaN and jumps to `c`. */
  Branch,
  Jump,
  /** Jumps to `b` unless register `a` is 1. */
  UnlessTrue,
  /** Jumps to `b` unless register `a` is 0. */
  UnlessFalse,
  Absolute,
  Smaller,
  Larger,
  SquareRoot,
  Floor,
  Ceil,
  /** Calls function `b` with the registers from `a` on; `c` says how many. */
  Call,
}

/** Numbers of one instruction: operation, target register, a, b, c. */
export const wide = 5;

/** A register program over float64: `evaluate`'s results, some hundred times faster. */
export interface Program {
  readonly code: Int32Array;
  readonly functions: readonly FormulaFunction[];
  /** A fresh set of registers: constants in place, cells not yet known. */
  registers(): Float64Array;
}

/** What a comparison of two numbers gives: 1, 0, or NaN where one of them is not known. */
function truth(holds: boolean, a: number, b: number): number {
  if (holds) return 1;
  return a === a && b === b ? 0 : NaN;
}

function call(fn: FormulaFunction, r: Float64Array, from: number, count: number): number {
  for (let i = from; i < from + count; i += 1) if (r[i] !== r[i]) return NaN;
  const value = fn.compute(float, Array.from(r.subarray(from, from + count)));
  return value - value === 0 ? value : NaN;
}

/** Runs the instructions from `start` up to `end` on a set of registers; what cannot be computed is NaN. */
export function run({ code, functions }: Program, r: Float64Array, start: number, end: number): void {
  let at = start;
  while (at < end) {
    const target = code[at + 1] as number;
    const a = r[code[at + 2] as number] as number;
    const bAt = code[at + 3] as number;
    const b = r[bAt] as number;
    let next = at + wide;
    // eslint-disable-next-line @typescript-eslint/no-unsafe-enum-assignment -- the writer puts only operations here
    const op: Op = code[at]!;
    // prettier-ignore
    switch (op) {
      case Op.Move: r[target] = a; break;
      case Op.Add: r[target] = a + b; break;
      case Op.Subtract: r[target] = a - b; break;
      case Op.Multiply: r[target] = a * b; break;
      case Op.Divide: r[target] = divideFloat(a, b); break;
      case Op.Power: r[target] = powerFloat(a, b); break;
      case Op.Square: r[target] = a * a; break;
      case Op.Negate: r[target] = -a; break;
      case Op.Not: r[target] = 1 - a; break;
      case Op.Less: r[target] = truth(compareFloat(a, b) < 0, a, b); break;
      case Op.AtMost: r[target] = truth(compareFloat(a, b) <= 0, a, b); break;
      case Op.Greater: r[target] = truth(compareFloat(a, b) > 0, a, b); break;
      case Op.AtLeast: r[target] = truth(compareFloat(a, b) >= 0, a, b); break;
      case Op.Equal: r[target] = truth(compareFloat(a, b) === 0, a, b); break;
      case Op.Unequal: r[target] = truth(Math.abs(compareFloat(a, b)) === 1, a, b); break;
      case Op.Branch:
        if (a === 0) next = bAt;
        else if (a !== 1) { r[target] = NaN; next = code[at + 4] as number; }
        break;
      case Op.Jump: next = bAt; break;
      case Op.UnlessTrue: if (a !== 1) next = bAt; break;
      case Op.UnlessFalse: if (a !== 0) next = bAt; break;
      case Op.Absolute: r[target] = Math.abs(a); break;
      case Op.Smaller: r[target] = Math.min(a, b); break;
      case Op.Larger: r[target] = Math.max(a, b); break;
      case Op.SquareRoot: r[target] = Math.sqrt(a); break;
      case Op.Floor: r[target] = floorFloat(a); break;
      case Op.Ceil: r[target] = ceilFloat(a); break;
      case Op.Call: r[target] = call(functions[bAt]!, r, code[at + 2]!, code[at + 4]!); break;
    }
    at = next;
  }
}
