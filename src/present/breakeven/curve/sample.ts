import type { Curve } from '../../../study/curve';

/** A stretch of an input; from is below to. */
export interface InputInterval {
  readonly from: number;
  readonly to: number;
}

/** A place of a line; y is NaN where the result cannot be computed. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Decades towards 0 that the places by ratio cover. */
const decades = 5;

/** Evenly spaced places of an interval. */
export function even({ from, to }: InputInterval, count: number): number[] {
  return Array.from({ length: count }, (_, k) => (k === count - 1 ? to : from + ((to - from) * k) / (count - 1)));
}

function byRatio({ from, to }: InputInterval, count: number): number[] {
  if (to <= 0) return [];
  const near = Math.max(from, to / 10 ** decades);
  return Array.from({ length: count }, (_, k) => near * (to / near) ** (k / (count - 1)));
}

/** Places of an interval, ascending: three quarters evenly spaced, a quarter by ratio, and the given ones inside it. */
export function places(stretch: InputInterval, count: number, given: readonly number[] = []): number[] {
  const all = [...even(stretch, Math.ceil(count * 0.75)), ...byRatio(stretch, Math.ceil(count / 4)), ...given];
  const inside = all.filter((x) => x >= stretch.from && x <= stretch.to).sort((a, b) => a - b);
  return inside.filter((x, i) => i === 0 || x > inside[i - 1]!);
}

function place(curve: Pick<Curve, 'float'>, x: number): Point {
  const y = curve.float(x);
  return { x, y: Number.isFinite(y) ? y : NaN };
}

/** Computes a line at some places. */
export function sample(curve: Pick<Curve, 'float'>, xs: readonly number[]): Point[] {
  return xs.map((x) => place(curve, x));
}

/** The points of two samples of one line, ascending and without repeats. */
export function merged(a: readonly Point[], b: readonly Point[]): Point[] {
  const all = [...a, ...b].sort((p, q) => p.x - q.x);
  return all.filter(({ x }, i) => i === 0 || x > all[i - 1]!.x);
}

function heightIn(points: readonly Point[], { from, to }: InputInterval): number {
  const ys = points.filter(({ x, y }) => x >= from && x <= to && !Number.isNaN(y)).map(({ y }) => y);
  return ys.length === 0 ? 0 : Math.max(...ys) - Math.min(...ys);
}

/** A rise between neighbours that may be a jump, as a share of the height shown. */
const visible = 0.02;
/** Halvings of the distance between two neighbours, enough to bring it below the width of a drawn line. */
const halvings = 5;

/** Further points close to a jump, found by halving towards the larger rise. */
function closeIn(curve: Pick<Curve, 'float'>, a: Point, b: Point): Point[] {
  let [left, right] = [a, b];
  const found: Point[] = [];
  for (let step = 0; step < halvings; step += 1) {
    const middle = place(curve, (left.x + right.x) / 2);
    found.push(middle);
    const atEdge = Number.isNaN(left.y) !== Number.isNaN(right.y);
    const inLeft = atEdge
      ? Number.isNaN(middle.y) !== Number.isNaN(left.y)
      : Math.abs(middle.y - left.y) >= Math.abs(right.y - middle.y);
    if (inLeft) right = middle;
    else left = middle;
  }
  return found;
}

/**
 * The line with further points where it rises most between neighbours, and where it stops being computable, so that a
 * jump is drawn upright.
 * @param shown the part of the range that is drawn
 * @param count how many points may be added
 */
export function sharpened(
  curve: Pick<Curve, 'float'>,
  points: readonly Point[],
  shown: InputInterval,
  count: number,
): Point[] {
  const height = heightIn(points, shown);
  const rise = (i: number): number => {
    const [a, b] = [points[i - 1]!.y, points[i]!.y];
    if (Number.isNaN(a) !== Number.isNaN(b)) return Infinity;
    return Math.abs(b - a);
  };
  const inSight = (i: number): boolean => i > 0 && points[i]!.x > shown.from && points[i - 1]!.x < shown.to;
  const steep = points.map((_, i) => i).filter((i) => inSight(i) && rise(i) > visible * height);
  const most = steep.sort((i, j) => rise(j) - rise(i)).slice(0, Math.floor(count / halvings));
  const more = most.flatMap((i) => closeIn(curve, points[i - 1]!, points[i]!));
  return merged(
    points,
    more.sort((p, q) => p.x - q.x),
  );
}
