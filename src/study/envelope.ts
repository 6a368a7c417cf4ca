import { decimal, type Decimal } from '../core/number';
import { finish, within, type Steps } from '../core/steps';
import type { Way } from './best';
import { shortestNear } from './bracket';
import { breakevenInSteps } from './breakeven';
import type { Curve } from './curve';
import { scanCurve } from './scan';
import type { SearchRange } from './searchRange';

/** A stretch of an input along which the same of several results are the best. */
export interface BestStretch {
  readonly from: Decimal;
  readonly to: Decimal;
  /**
   * Indices of the best among those compared, ascending: several where they are alike all along; none where none can be
   * computed.
   */
  readonly best: readonly number[];
  /** Whether it begins right behind `from`, where a result jumps; else `from` belongs to it. */
  readonly isBehind: boolean;
}

/** A place where another result may become the best. */
interface Cut {
  readonly x: Decimal;
  /** Whether a result jumps there, or stops being computable. */
  readonly isJump: boolean;
}

const zero = decimal(0);
const unknown = decimal(NaN);
/** Results this close, as a share of the best, are the same: the rounding of exact numbers. */
const noise = decimal('1e-26');
/** The same in float64. */
const floatNoise = 1e-12;
/** Comparisons in formulas take numbers this close as equal: cuts no farther apart are one. */
const oneCut = decimal('4e-12');

/** Indices of the best of several numbers, ascending; NaN is never the best. */
export function bestAmongNumbers(values: readonly Decimal[], way: Way): number[] {
  const known = values.filter((value) => value.isFinite());
  const isBetter = (a: Decimal, b: Decimal): boolean => (way === 'highest' ? a.gt(b) : a.lt(b));
  const best = known.reduce<Decimal | undefined>(
    (one, other) => (one && !isBetter(other, one) ? one : other),
    undefined,
  );
  if (best === undefined) return [];
  const reach = best.abs().times(noise);
  return values.flatMap((value, i) => (value.isFinite() && value.minus(best).abs().lte(reach) ? [i] : []));
}

function less(a: Curve, b: Curve): Curve {
  return { exact: (x) => a.exact(x).minus(b.exact(x)), float: (x) => a.float(x) - b.float(x) };
}

/** 1 where a curve can be computed, −1 where it cannot: its edges are the jumps of this one. */
function known(curve: Curve): Curve {
  const one = decimal(1);
  return {
    exact: (x) => (curve.exact(x).isFinite() ? one : one.neg()),
    float: (x) => (Number.isFinite(curve.float(x)) ? 1 : -1),
  };
}

/** Whether two curves run together over a part of the range and no more than a part. */
function runTogether(a: Curve, b: Curve, range: SearchRange): boolean {
  const { places, heights } = scanCurve(less(a, b), range, 0, []);
  const together = places.near.map((x, i) => Math.abs(heights[i]!) <= floatNoise * Math.abs(a.float(x)));
  return together.some((one, i) => one && together[i + 1] === true) && together.includes(false);
}

/** The places where a curve comes to 0 from either side, jumps past it, or changes side across what is unknown. */
function* cutsOf(curve: Curve, range: SearchRange, given: readonly Decimal[]): Steps<Cut[]> {
  const { crossings, breaks } = yield* breakevenInSteps(curve, range, zero, given);
  const span = range.to.minus(range.from);
  return [
    ...crossings.map(({ value, isJump }) => ({ x: isJump ? shortestNear(value, oneCut, span) : value, isJump })),
    ...breaks.map((x) => ({ x, isJump: true })),
  ];
}

/** The curves whose places of 0 may be cuts: each difference, and where a curve stops being computable. */
function candidates(curves: readonly Curve[], range: SearchRange): Curve[] {
  const pairs = curves.flatMap((a, i) => curves.slice(i + 1).map((b) => [a, b] as const));
  const gaps = curves.filter((curve) => scanCurve(curve, range, 0, []).heights.some((y) => !Number.isFinite(y)));
  return [
    // A curve that comes down to another and stays there never falls below it: seen from the other it rises to it.
    ...pairs.flatMap(([a, b]) => (runTogether(a, b, range) ? [less(a, b), less(b, a)] : [less(a, b)])),
    ...gaps.map(known),
  ];
}

/** Cuts in order, those that are one taken together under the shortest number. */
function inOrder(cuts: readonly Cut[], { from, to }: SearchRange): Cut[] {
  const inside = cuts.filter(({ x }) => x.gt(from) && x.lt(to)).sort((a, b) => a.x.cmp(b.x));
  return inside.reduce<Cut[]>((kept, next) => {
    const last = kept.at(-1);
    if (last === undefined || next.x.minus(last.x).gt(next.x.abs().times(oneCut))) return [...kept, next];
    const x = next.x.precision() < last.x.precision() ? next.x : last.x;
    return [...kept.slice(0, -1), { x, isJump: last.isJump || next.isJump }];
  }, []);
}

function stretchesOf(curves: readonly Curve[], range: SearchRange, way: Way, cuts: readonly Cut[]): BestStretch[] {
  const bestAt = (x: Decimal): number[] =>
    bestAmongNumbers(
      curves.map((curve) => {
        const y = curve.exact(x);
        return y.isFinite() ? y : unknown;
      }),
      way,
    );
  const starts: Cut[] = [{ x: range.from, isJump: false }, ...cuts];
  return starts.reduce<BestStretch[]>((found, { x, isJump }, i) => {
    const to = starts[i + 1]?.x ?? range.to;
    const best = bestAt(x.plus(to).dividedBy(2));
    const last = found.at(-1);
    if (last?.best.join() === best.join()) return [...found.slice(0, -1), { ...last, to }];
    const atStart = isJump ? bestAt(x) : best;
    const isBehind = best.some((curve) => !atStart.includes(curve));
    return [...found, { from: x, to, best, isBehind }];
  }, []);
}

/**
 * Which of several results is the best along an input, in stretches that cover the range: the upper or the lower
 * envelope. Each pair of results is searched for where they meet, as breakeven does, so the ends are as
 * exact as its crossings, and what is missed there is missed here.
 * @param way whether the highest or the lowest is the best
 * @param given further inputs to look at, such as today's
 */
export function bestAlong(
  curves: readonly Curve[],
  range: SearchRange,
  way: Way,
  given: readonly Decimal[] = [],
): BestStretch[] {
  return finish(bestAlongInSteps(curves, range, way, given));
}

/** The same in steps: several for each pair. */
export function* bestAlongInSteps(
  curves: readonly Curve[],
  range: SearchRange,
  way: Way,
  given: readonly Decimal[] = [],
): Steps<BestStretch[]> {
  const searched = candidates(curves, range);
  const cuts: Cut[] = [];
  for (const [i, curve] of searched.entries()) {
    const count = searched.length;
    cuts.push(...(yield* within(i / count, (i + 1) / count, cutsOf(curve, range, given))));
  }
  return stretchesOf(curves, range, way, inOrder(cuts, range));
}
