import type { Decimal } from '../core/number';

/**
 * A number that depends on inputs, computed exactly from an `Exact` or in float64 from a `Float`: one number, or one
 * for each input. NaN where it cannot be computed.
 */
export interface Moving<Exact, Float> {
  /** The number today. */
  readonly base: Decimal;
  /** Whether it depends on any of the inputs. */
  readonly depends: boolean;
  exact(at: Exact): Decimal;
  float(at: Float): number;
}

/** The difference of two such numbers of the same inputs. */
export function difference<Exact, Float>(own: Moving<Exact, Float>, other: Moving<Exact, Float>): Moving<Exact, Float> {
  return {
    base: own.base.minus(other.base),
    depends: own.depends || other.depends,
    exact: (at) => own.exact(at).minus(other.exact(at)),
    float: (at) => own.float(at) - other.float(at),
  };
}
