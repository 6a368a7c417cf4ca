import { decimal } from '../../../core/number';
import type { BreakevenPoints, Crossing } from '../../../study/breakeven';
import type { Curve } from '../../../study/curve';
import type { SearchRange } from '../../../study/searchRange';
import { settledAtEnds } from '../../../study/settled';
import type { Point } from './sample';

/** Heights this near to the target, as a share of the largest number met, count as at it: rounding of float64. */
const noise = 1e-12;
const halvings = 80;
/** Width of the last bracket, as a share of the input. */
const width = 1e-12;
/**
 * To tell a pole from a jump, the change across the bracket is compared with the change over this many bracket widths;
 * more than `poleGrowth` times as much is a pole.
 */
const wider = 1e4;
const poleGrowth = 10;

interface Bracket {
  readonly a: Point;
  readonly b: Point;
}

class QuickSearch {
  constructor(
    private readonly curve: Pick<Curve, 'float'>,
    private readonly target: number,
    private readonly least: number,
  ) {}

  isAbove(y: number): boolean {
    return y - this.target >= -this.least;
  }

  /**
   * Neighbouring known points on different sides of the target. `gap` is a place between them that cannot be computed.
   */
  changes(points: readonly Point[]): { a: Point; b: Point; gap: number | undefined }[] {
    const found: { a: Point; b: Point; gap: number | undefined }[] = [];
    let before: Point | undefined;
    let gap: number | undefined;
    for (const point of points) {
      if (Number.isNaN(point.y)) {
        gap ??= point.x;
        continue;
      }
      if (before !== undefined && this.isAbove(before.y) !== this.isAbove(point.y)) {
        found.push({ a: before, b: point, gap });
      }
      before = point;
      gap = undefined;
    }
    return found;
  }

  /** Halves a bracket as far as float64 goes; stops at a place that cannot be computed. */
  halved({ a, b }: Bracket): Bracket | { unknown: number } {
    let [left, right] = [a, b];
    for (let step = 0; step < halvings; step += 1) {
      const x = (left.x + right.x) / 2;
      if (right.x - left.x <= width * Math.abs(x)) break;
      const y = this.curve.float(x);
      if (!Number.isFinite(y)) return { unknown: x };
      if (this.isAbove(y) === this.isAbove(left.y)) left = { x, y };
      else right = { x, y };
    }
    return { a: left, b: right };
  }

  /**
   * Whether the change across a closed bracket is that of a pole, which grows as the bracket closes, and not that of a
   * jump, which stays as it is.
   */
  isPole({ a, b }: Bracket, from: Bracket): boolean {
    const reach = Math.max((b.x - a.x) * wider, Math.abs(b.x) * 1e-9);
    const [left, right] = [Math.max(a.x - reach, from.a.x), Math.min(b.x + reach, from.b.x)];
    const around = Math.abs(this.curve.float(right) - this.curve.float(left));
    return Math.abs(b.y - a.y) > around * poleGrowth;
  }
}

/** Roughly where a sampled line changes side: half-way between neighbouring points. */
export function changesOfSide(points: readonly Point[], target: number, scale: number): number[] {
  const search = new QuickSearch({ float: () => NaN }, target, noise * scale);
  return search.changes(points).map(({ a, b }) => (a.x + b.x) / 2);
}

/**
 * Where a sampled line meets a target, by float64 alone and fast enough for every keystroke. Crossings between two
 * samples of one side are missed here and left to the exact search.
 * @param points the line over the range, ascending
 * @param scale the largest absolute number from which the line is computed
 */
export function quickSearch(
  curve: Pick<Curve, 'float'>,
  points: readonly Point[],
  range: SearchRange,
  target: number,
  scale: number,
): BreakevenPoints {
  const search = new QuickSearch(curve, target, noise * scale);
  const crossings: Crossing[] = [];
  const breaks: number[] = [];
  for (const { a, b, gap } of search.changes(points)) {
    const closed = gap === undefined ? search.halved({ a, b }) : { unknown: gap };
    if ('unknown' in closed) breaks.push(closed.unknown);
    else if (search.isPole(closed, { a, b })) breaks.push(closed.b.x);
    else {
      const reached = search.isAbove(closed.b.y);
      crossings.push({ value: shown(reached ? closed.b.x : closed.a.x), direction: reached ? 'up' : 'down' });
    }
  }
  const known = points.find(({ y }) => !Number.isNaN(y));
  const none = crossings.length + breaks.length === 0 && known !== undefined;
  const holds = none ? (search.isAbove(known.y) ? 'everywhere' : 'nowhere') : null;
  return settledAtEnds({ range, crossings, breaks: breaks.map(shown), holds });
}

function shown(x: number): Crossing['value'] {
  return decimal(Number(x.toPrecision(10)));
}
