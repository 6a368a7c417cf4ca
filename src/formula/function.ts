import { wording } from '../language/wording';
import type { Arithmetic } from '../core/arithmetic';
import { plain, same, type Dimension } from '../core/dimension';
import { isCounted } from '../core/unit';
import type { Example } from './example';

/** A value's dimension as a function's unit rule sees it; undefined for a literal 0, which fits any. */
export interface Argument {
  readonly dimension: Dimension | undefined;
  /** It is, or sums, cells whose unit carries a factor such as `%`. */
  readonly factored: boolean;
  /** The whole number that is written, where the argument is a literal. */
  readonly literal: number | undefined;
}

/** What a function gives, and in which scale it takes its arguments: `common` keeps theirs, `base` is base units. */
export interface Typing {
  readonly dimension: Dimension | undefined;
  readonly scale: 'common' | 'base';
}

/** A reason why a value cannot be computed. */
export interface Reason {
  readonly code: string;
  readonly message: string;
}

/** A function of formulas: its help, arity, unit rule, arithmetic and faults in one record. */
export interface FormulaFunction {
  readonly name: string;
  readonly signature: string;
  readonly summary: string;
  /** The unit rule in words, as sentences. */
  readonly units: string;
  /** Run as tests, and by the help. */
  readonly examples: readonly Example[];
  /** Least and most arguments. */
  readonly arity: readonly [least: number, most: number];
  /** The dimension of the result, or what is wrong with the arguments, as a clause about the function of that name. */
  typing(args: readonly Argument[], name: string): Typing | string;
  /** NaN where it cannot be computed. */
  compute<T>(arithmetic: Arithmetic<T>, args: readonly T[]): T;
  /** Why known arguments gave no value. */
  reason(args: readonly number[]): Reason;
}

/** No upper bound on the number of arguments. */
export const many = Infinity;

const overflow: Reason = { code: 'overflow', message: wording`result too large` };

/** A record whose only fault is a result too large, unless it says otherwise. */
export function record(
  entry: Omit<FormulaFunction, 'reason'> & Partial<Pick<FormulaFunction, 'reason'>>,
): FormulaFunction {
  return { reason: () => overflow, ...entry };
}

/** A reason that an argument lies outside what the function is defined for. */
export function outside(message: string): Reason {
  return { code: 'domain', message };
}

/** The n-th argument; the arity has been checked. */
export function nth<T>(args: readonly T[], n: number): T {
  return args[n] as T;
}

export function isPlain({ dimension }: Argument): boolean {
  return dimension === undefined || dimension.size === 0;
}

/** Whether an argument is a plain number or a pure count, such as plants or plants per board. */
export function isCount({ dimension = plain }: Argument): boolean {
  return [...dimension.keys()].every(isCounted);
}

/** Whether an argument has the wanted dimension; a literal 0 has any. */
export function fits(arg: Argument | undefined, wanted: Dimension): boolean {
  return arg?.dimension === undefined || same(arg.dimension, wanted);
}

/** What a unit rule says: a dimension, all in base units, where the arguments are right, else what is wrong. */
export function inBaseUnits(areRight: boolean, dimension: Dimension | undefined, wrong: string): Typing | string {
  return areRight ? { dimension: dimension ?? plain, scale: 'base' } : wrong;
}
