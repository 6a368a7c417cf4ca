import { decimal, type Decimal } from '../core/number';

/** A place of a curve: the input and how far the result stands above the target. */
export interface Place {
  readonly x: Decimal;
  readonly y: Decimal;
}

/** Two places with the target between them, drawn together as far as the precision asks. */
export interface Bracket {
  readonly a: Place;
  readonly b: Place;
  /** Where the search met a place that cannot be computed. */
  readonly unknown: Decimal | undefined;
}

/** Width of the last bracket around a crossing, as a share of the input: 34 digits hold it with room to spare. */
const width = decimal('1e-26');
const two = decimal(2);
const most = 250;

/** Whether a height lies above the target; at it counts as above. */
export function isAbove(height: Decimal): boolean {
  return height.gte(0);
}

function isWithin(a: Decimal, b: Decimal, span: Decimal): boolean {
  const size = a.abs().gt(b.abs()) ? a.abs() : b.abs();
  return b
    .minus(a)
    .abs()
    .lte(size.times(width).plus(span.times(width).times(width)));
}

/** Chandrupatla's rule: whether the inverse parabola through three places is fit to choose the next one. */
function parabolaStep(a: Place, b: Place, c: Place): Decimal | undefined {
  const xi = a.x.minus(b.x).dividedBy(c.x.minus(b.x));
  const phi = a.y.minus(b.y).dividedBy(c.y.minus(b.y));
  const one = decimal(1);
  if (!(phi.pow(2).lt(xi) && one.minus(phi).pow(2).lt(one.minus(xi)))) return undefined;
  const first = a.y.dividedBy(b.y.minus(a.y)).times(c.y.dividedBy(b.y.minus(c.y)));
  const slope = c.x.minus(a.x).dividedBy(b.x.minus(a.x));
  const second = slope.times(a.y.dividedBy(c.y.minus(a.y))).times(b.y.dividedBy(c.y.minus(b.y)));
  return first.plus(second);
}

/**
 * Draws two places on different sides of the target together: Chandrupatla's algorithm (Adv. Eng. Software 28(3), 1997,
 * 145–149), which halves unless an inverse parabola is safe, and so also closes in on jumps and poles.
 * @param height the result less the target; NaN where it cannot be computed, which ends the search
 */
export function drawTogether(height: (x: Decimal) => Decimal, from: Place, to: Place): Bracket {
  const span = to.x.minus(from.x).abs();
  let [a, b] = [from, to];
  let share = decimal('0.5');
  for (let step = 0; step < most && !isWithin(a.x, b.x, span); step += 1) {
    const x = a.x.plus(share.times(b.x.minus(a.x)));
    if (x.eq(a.x) || x.eq(b.x)) break;
    const next: Place = { x, y: height(x) };
    if (next.y.isNaN()) return { ...ordered(a, b), unknown: x };
    let c: Place;
    if (isAbove(next.y) === isAbove(a.y)) c = a;
    else [c, b] = [b, a];
    a = next;
    share = nextShare(a, b, c);
  }
  return { ...ordered(a, b), unknown: undefined };
}

function nextShare(a: Place, b: Place, c: Place): Decimal {
  const half = decimal('0.5');
  const step = parabolaStep(a, b, c);
  if (step === undefined || !step.isFinite()) return half;
  const least = width.times(a.x.abs()).dividedBy(b.x.minus(a.x).abs().times(two));
  const low = least.gt(half) ? half : least;
  if (step.lt(low)) return low;
  const high = decimal(1).minus(low);
  return step.gt(high) ? high : step;
}

function ordered(a: Place, b: Place): { a: Place; b: Place } {
  return a.x.lt(b.x) ? { a, b } : { a: b, b: a };
}

/**
 * The shortest number within a share of another, so that a root found as 4.99999999999999999 is given as 5.
 * @param span width of the range searched; a number negligible beside it becomes 0
 */
export function shortestNear(x: Decimal, share: Decimal, span: Decimal): Decimal {
  const reach = x.abs().times(share);
  if (x.abs().lte(span.times(share).times(share))) return decimal(0);
  for (let digits = 1; digits < 30; digits += 1) {
    const short = x.toSignificantDigits(digits);
    if (short.minus(x).abs().lte(reach)) return short;
  }
  return x;
}
