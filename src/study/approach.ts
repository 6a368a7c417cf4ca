import { decimal, type Decimal } from '../core/number';
import { isAbove, type Place } from './bracket';

/** A result less the target, exactly and in float64; NaN where it cannot be computed. */
export interface Heights {
  readonly exact: (x: Decimal) => Decimal;
  readonly quick: (x: number) => number;
}

/** What halving finds between a place where a curve can be computed and one where it cannot. */
export interface Approach {
  /** Pairs of neighbouring places between which the curve changes side of the target, in the order met. */
  readonly changes: readonly (readonly [Place, Place])[];
  /** The last place met that can be computed; the curve keeps its side of the target from there to its end. */
  readonly last: Place;
}

const floatSteps = 60;
const exactSteps = 100;
/**
 * Comparisons treat inputs closer than this share as equal. A change of side this near to the curve's end comes from
 * that and not from the curve.
 */
const tied = decimal('4e-12');
const none = decimal(0);

/**
 * Whether the curve stays on one side of the target up to its end: by halving in float64, with the last place confirmed
 * exactly.
 */
function keepsSide({ exact, quick }: Heights, known: Place, unknown: Decimal): boolean {
  const above = isAbove(known.y);
  let [inside, outside] = [known.x.toNumber(), unknown.toNumber()];
  for (let step = 0; step < floatSteps; step += 1) {
    const middle = (inside + outside) / 2;
    if (Math.abs(outside - inside) <= Math.abs(outside) * tied.toNumber()) break;
    const height = quick(middle);
    if (Number.isNaN(height)) outside = middle;
    else if (height >= 0 === above) inside = middle;
    else return false;
  }
  const height = exact(decimal(inside));
  return !height.isNaN() && isAbove(height) === above;
}

/**
 * Halves the distance to the place where a curve ends.
 * @param share distance from the end at which halving stops, as a share of the input
 * @returns the places met that can be computed, and the nearest one found that cannot
 */
function halved({ exact }: Heights, known: Place, unknown: Decimal, share: Decimal): { met: Place[]; end: Decimal } {
  const met = [known];
  let end = unknown;
  for (let step = 0; step < exactSteps; step += 1) {
    const inside = met.at(-1)?.x ?? known.x;
    const middle = inside.plus(end).dividedBy(2);
    if (middle.eq(inside) || middle.eq(end) || end.minus(inside).abs().lte(end.abs().times(share))) break;
    const y = exact(middle);
    if (y.isNaN()) end = middle;
    else met.push({ x: middle, y });
  }
  return { met, end };
}

/** Follows a curve from a place where it can be computed towards one where it cannot. */
export function approach(heights: Heights, known: Place, unknown: Decimal): Approach {
  if (keepsSide(heights, known, unknown)) return { changes: [], last: known };
  const { met } = halved(heights, known, unknown, tied);
  const changes = met.flatMap((to, i): [Place, Place][] => {
    const from = met[i - 1];
    return from === undefined || isAbove(from.y) === isAbove(to.y) ? [] : [[from, to]];
  });
  return { changes, last: met.at(-1) ?? known };
}

/** The end of a curve between a place where it can be computed and one where it cannot. */
export function edge(heights: Heights, known: Place, unknown: Decimal): Decimal {
  return halved(heights, known, unknown, none).end;
}
