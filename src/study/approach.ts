import { decimal, type Decimal } from '../core/number';
import { isAbove, type Place } from './bracket';

/** A result less the target, exactly and in float64; NaN where it cannot be computed. */
export interface Heights {
  readonly exact: (x: Decimal) => Decimal;
  readonly quick: (x: number) => number;
}

/** How a curve goes on from a place towards one where it cannot be computed. */
export interface Approach {
  /** Places on the way between which it changes side, in the order in which they are met. */
  readonly changes: readonly (readonly [Place, Place])[];
  /** A place next to where it ends, and on the same side. */
  readonly last: Place;
}

const floatSteps = 60;
const exactSteps = 100;
/** Comparisons take inputs this near as equal, as a share: a change of side so near to the end is their doing. */
const tied = decimal('4e-12');
const none = decimal(0);

/** Whether float64 sees a curve keep its side to its end, and the last place that it sees is exactly so. */
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
 * Halves the way to where a curve ends.
 * @param share how near to the end it goes, as a share of the input
 * @returns the places met that can be computed, and the first that cannot
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

/** Follows a curve from a place to where it stops being computable. */
export function approach(heights: Heights, known: Place, unknown: Decimal): Approach {
  if (keepsSide(heights, known, unknown)) return { changes: [], last: known };
  const { met } = halved(heights, known, unknown, tied);
  const changes = met.flatMap((to, i): [Place, Place][] => {
    const from = met[i - 1];
    return from === undefined || isAbove(from.y) === isAbove(to.y) ? [] : [[from, to]];
  });
  return { changes, last: met.at(-1) ?? known };
}

/** Where a curve stops being computable, between a place where it is and one where it is not. */
export function edge(heights: Heights, known: Place, unknown: Decimal): Decimal {
  return halved(heights, known, unknown, none).end;
}
