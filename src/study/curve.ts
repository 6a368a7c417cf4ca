import { decimal, type Decimal } from '../core/number';

/** A number that depends on one input; NaN where it cannot be computed. */
export interface Curve {
  exact(x: Decimal): Decimal;
  float(x: number): number;
}

/** How closely a search looks, as shares of the numbers it looks at. */
export interface Precision {
  /** Width of the last bracket around a crossing, as a share of the input. */
  readonly width: Decimal;
  /** Results this near to the target, as a share of the largest met, count as being at it: the arithmetic's noise. */
  readonly noise: Decimal;
  /** A crossing is given by the shortest number within this share of it. */
  readonly tidy: Decimal;
}

/** For curves in 34 digits, whose digits are taken at their word. */
export const exactPrecision: Precision = { width: decimal('1e-26'), noise: decimal(0), tidy: decimal('1e-18') };

/** For curves in float64. */
export const floatPrecision: Precision = { width: decimal('1e-14'), noise: decimal('1e-13'), tidy: decimal('1e-12') };

/** A curve that is float64 all through, for a search that must keep up with a keystroke. */
export function floatOnly(curve: Curve): Curve {
  return { float: (x) => curve.float(x), exact: (x) => decimal(curve.float(x.toNumber())) };
}
