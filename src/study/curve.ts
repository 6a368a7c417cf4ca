import type { Decimal } from '../core/number';

/** A number that depends on one input; NaN where it cannot be computed. */
export interface Curve {
  exact(x: Decimal): Decimal;
  /** The same in float64, to look at many places in little time. */
  float(x: number): number;
}
