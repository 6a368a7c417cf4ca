import type { Decimal } from '../core/number';
import type { Response } from '../model/response';

/** A number that depends on one input; NaN where it cannot be computed. */
export interface Curve {
  exact(x: Decimal): Decimal;
  /** The same in float64, for looking at many places quickly. */
  float(x: number): number;
}

/** A result as its only input moves. */
export function curveAlong(response: Response): Curve {
  return { exact: (x) => response.exact([x]), float: (x) => response.float([x]) };
}
