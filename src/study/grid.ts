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

/** Where a grid looks along an input: its range, or where a search would look. */
export function gridRange(lever: Lever): SearchRange {
  return lever.range === undefined ? defaultRange(lever) : { from: lever.range.low, to: lever.range.high };
}

/** Evenly spaced inputs from one end of a range to the other, both included. */
export function evenSteps({ from, to }: SearchRange, steps: number): Decimal[] {
  const span = to.minus(from);
  return Array.from({ length: steps }, (_, k) => from.plus(span.times(k).dividedBy(decimal(Math.max(steps - 1, 1)))));
}

/** A result over two inputs, exactly. */
export function grid(question: Question, across: Lever, down: Lever, steps: number): Grid<Decimal> {
  const response = question.response([across, down]);
  const xs = evenSteps(gridRange(across), steps);
  const ys = evenSteps(gridRange(down), steps);
  return { across: xs, down: ys, values: ys.map((y) => xs.map((x) => response.exact([x, y]))) };
}

/** The same in float64, for drawing. */
export function quickGrid(question: Question, across: Lever, down: Lever, steps: number): Grid<number> {
  const response = question.response([across, down]);
  const xs = evenSteps(gridRange(across), steps).map((x) => x.toNumber());
  const ys = evenSteps(gridRange(down), steps).map((y) => y.toNumber());
  return { across: xs, down: ys, values: ys.map((y) => xs.map((x) => response.float([x, y]))) };
}
