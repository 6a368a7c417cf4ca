import { decimal, type Decimal } from '../core/number';
import type { Question } from '../model/response';
import type { Lever } from '../model/view';
import { defaultRange, type SearchRange } from './searchRange';

/** A result over two inputs; `values[j][i]` is at `down[j]`, `across[i]`; NaN where it cannot be computed. */
export interface Grid<T> {
  readonly across: readonly T[];
  readonly down: readonly T[];
  readonly values: readonly (readonly T[])[];
}

/** A number that depends on two inputs; NaN where it cannot be computed. */
export interface Surface {
  exact(x: Decimal, y: Decimal): Decimal;
  float(x: number, y: number): number;
}

/** The range over which a grid looks along an input: its own range, or else the default search range. */
export function gridRange(lever: Lever): SearchRange {
  return lever.range === undefined ? defaultRange(lever) : { from: lever.range.low, to: lever.range.high };
}

/**
 * The range over which a picture looks along an input: its own range. Without one, or where that has no width, from
 * half of its number to one and a half times it, for a share in % up to 100 at most. From 0 to 1 where the number is 0.
 */
export function pictureRange({ cell, base, range }: Lever): SearchRange {
  if (range?.low.lt(range.high) === true) return { from: range.low, to: range.high };
  if (base.isZero()) return { from: decimal(0), to: decimal(1) };
  const ends = [base.times('0.5'), base.times('1.5')] as const;
  const [from, to] = base.isNegative() ? [ends[1], ends[0]] : ends;
  const isShare = cell.unitText === '%' && base.lte(100);
  return { from, to: isShare && to.gt(100) ? decimal(100) : to };
}

/** Evenly spaced inputs from one end of a range to the other, both included. */
export function evenSteps({ from, to }: SearchRange, steps: number): Decimal[] {
  const span = to.minus(from);
  return Array.from({ length: steps }, (_, k) => from.plus(span.times(k).dividedBy(decimal(Math.max(steps - 1, 1)))));
}

/** The result of a question as two of its inputs move. */
export function surfaceOf(question: Question, across: Lever, down: Lever): Surface {
  const response = question.response([across, down]);
  return { exact: (x, y) => response.exact([x, y]), float: (x, y) => response.float([x, y]) };
}

/** The rows of a grid one at a time, so that a page can pause between them. */
export function* gridRows<T>(
  at: (x: T, y: T) => T,
  across: readonly T[],
  down: readonly T[],
): Generator<readonly T[], void> {
  for (const y of down) yield across.map((x) => at(x, y));
}

/** A result over two inputs, exactly. */
export function grid(question: Question, across: Lever, down: Lever, steps: number): Grid<Decimal> {
  const surface = surfaceOf(question, across, down);
  const xs = evenSteps(gridRange(across), steps);
  const ys = evenSteps(gridRange(down), steps);
  return { across: xs, down: ys, values: [...gridRows((x, y) => surface.exact(x, y), xs, ys)] };
}
