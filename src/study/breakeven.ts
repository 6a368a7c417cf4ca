import { decimal, type Decimal } from '../core/number';
import { finish, type Steps } from '../core/steps';
import { approach, edge, type Heights } from './approach';
import { drawTogether, isAbove, shortestNear, type Place } from './bracket';
import type { Curve } from './curve';
import { scanCloser, type CloserScan } from './closerScan';
import { scanCurve } from './scan';
import type { SearchRange } from './searchRange';
import { tangencies } from './tangency';

/** A place where the result comes to the target: from below, from above, or only touching it. */
export interface Crossing {
  readonly value: Decimal;
  /** As the input rises, whether the result passes the target upwards or downwards. */
  readonly direction: 'up' | 'down' | 'touch';
}

/** A crossing found in exact numbers. */
export interface ExactCrossing extends Crossing {
  /** Whether the result jumps across the target. `value` then lies on the side that is at or above the target. */
  readonly isJump: boolean;
}

/** Where a result is at or above a target, as one input moves over a range. */
export interface BreakevenPoints {
  readonly range: SearchRange;
  /** Ascending. */
  readonly crossings: readonly Crossing[];
  /** Inputs at which the result changes side at a pole or across values that cannot be computed; ascending. */
  readonly breaks: readonly Decimal[];
  /**
   * Whether the result is at or above the target over the whole range; null where there are crossings or breaks, or
   * where nothing can be computed.
   */
  readonly holds: 'everywhere' | 'nowhere' | null;
}

/** The same with each crossing found in exact numbers. */
export interface ExactBreakeven extends BreakevenPoints {
  readonly crossings: readonly ExactCrossing[];
}

/** A change of side between two scanned places, or across places that cannot be computed. */
interface Change {
  readonly from: Place;
  readonly to: Place;
  readonly gap: Decimal | undefined;
}

const zero = decimal(0);
/** Approximate share of the work that scanning the range takes; the rest is finding the crossings. */
const scanShare = 0.5;

type Found = { readonly crossing: ExactCrossing } | { readonly pole: Decimal };

/** A crossing is given by the shortest number within this share of it. */
const tidyShare = decimal('1e-18');
/**
 * To tell a root, a jump and a pole apart, the change across the bracket is compared with the change over a wider
 * stretch: this many bracket widths, or `beyondTies` of the input where that is more.
 */
const wider = decimal('1e6');
const beyondTies = decimal('1e-9');
/** A pole: the result changes more than this many times as much across the bracket as over the wider stretch. */
const poleGrowth = 10;
/** A jump: across the bracket the result changes by at least this share of its change over the wider stretch. */
const jumpShare = decimal('1e-3');
/**
 * Comparisons and rounding treat numbers closer than this share as equal, so a jump may lie that far from its number.
 */
const tieReach = decimal('1.5e-12');

/** One search along a curve for a target. */
class Search {
  readonly closer: CloserScan;
  private readonly span: Decimal;

  constructor(
    private readonly curve: Curve,
    range: SearchRange,
    private readonly target: Decimal,
    given: readonly Decimal[],
  ) {
    this.span = range.to.minus(range.from);
    const size = Math.max(...[range.from, range.to, target].map((x) => Math.abs(x.toNumber())));
    this.closer = scanCloser(scanCurve(curve, range, target.toNumber(), given), this.height, size);
  }

  private readonly height = (x: Decimal): Decimal => this.curve.exact(x).minus(this.target);

  private readonly heights: Heights = {
    exact: this.height,
    quick: (x) => this.curve.float(x) - this.target.toNumber(),
  };

  changes(): Change[] {
    const { heights, place } = this.closer;
    const known = heights.flatMap((height, i) => (Number.isNaN(height) ? [] : i));
    // The results before the first known place and after the last one may be unknown too.
    return [-1, ...known].flatMap((before, k): Change[] => {
      const after = known[k] ?? heights.length;
      if (after > before + 1) return this.acrossUnknown(before, after);
      if (before < 0 || after >= heights.length || heights[before]! >= 0 === heights[after]! >= 0) return [];
      return [{ from: place(before), to: place(after), gap: undefined }];
    });
  }

  /** Changes of side towards places that cannot be computed, and across them. */
  private acrossUnknown(before: number, after: number): Change[] {
    const { heights, place } = this.closer;
    const rising = before < 0 ? undefined : approach(this.heights, place(before), place(before + 1).x);
    const falling = after >= heights.length ? undefined : approach(this.heights, place(after), place(after - 1).x);
    const changes = [
      ...(rising?.changes ?? []).map(([from, to]) => ({ from, to, gap: undefined })),
      ...(falling?.changes ?? []).map(([to, from]) => ({ from, to, gap: undefined })),
    ];
    if (rising === undefined || falling === undefined || isAbove(rising.last.y) === isAbove(falling.last.y)) {
      return changes;
    }
    return [...changes, { from: rising.last, to: falling.last, gap: place(before + 1).x }];
  }

  resolve({ from, to, gap }: Change): Found {
    if (gap !== undefined) return { pole: this.tidy(edge(this.heights, from, gap)) };
    const { a, b, unknown } = drawTogether(this.height, from, to);
    if (unknown !== undefined) return { pole: this.tidy(edge(this.heights, a, unknown)) };
    const across = b.y.minus(a.y).abs();
    const around = this.changeAround(a, b, from, to);
    if (across.gt(around.times(poleGrowth))) return { pole: this.poleAt(b.x) };
    const isJump = across.gte(around.times(jumpShare));
    const direction = isAbove(b.y) ? 'up' : 'down';
    return { crossing: { value: this.valueBetween(a, b, isJump), direction, isJump } };
  }

  /** How much the result changes over a stretch wider than the bracket (see `wider`), cut off at the scanned places. */
  private changeAround(a: Place, b: Place, from: Place, to: Place): Decimal {
    const byWidth = b.x.minus(a.x).times(wider);
    const byShare = b.x.abs().times(beyondTies);
    const reach = byWidth.gt(byShare) ? byWidth : byShare;
    const before = a.x.minus(reach).lt(from.x) ? from.x : a.x.minus(reach);
    const after = b.x.plus(reach).gt(to.x) ? to.x : b.x.plus(reach);
    return this.height(after).minus(this.height(before)).abs();
  }

  /** The shortest number in the bracket; at a jump, one on the side that is at or above the target. */
  private valueBetween(a: Place, b: Place, isJump: boolean): Decimal {
    const reached = isAbove(b.y) ? b : a;
    if (a.x.lte(0) && b.x.gte(0) && isAbove(this.height(zero))) return zero;
    const shares = isJump ? [tieReach, tidyShare] : [tidyShare];
    const candidates = shares.map((share) => shortestNear(reached.x, share, this.span));
    return candidates.find((x) => isAbove(this.height(x))) ?? reached.x;
  }

  /**
   * The place of a pole. Where a comparison in the formula gives the result a value there, the number compared with.
   */
  private poleAt(x: Decimal): Decimal {
    const filled = shortestNear(x, tieReach, this.span);
    const height = this.height(filled);
    return height.isNaN() || height.isZero() ? filled : this.tidy(x);
  }

  tidy(x: Decimal): Decimal {
    return shortestNear(x, tidyShare, this.span);
  }

  touches(): { touching: ExactCrossing[]; changes: Change[] } {
    const found = tangencies(this.closer, this.heights);
    const touching = found.touching.map((x): ExactCrossing => ({
      value: this.tidy(x),
      direction: 'touch',
      isJump: false,
    }));
    return { touching, changes: found.changes.map(([from, to]) => ({ from, to, gap: undefined })) };
  }
}

/** Two crossings of opposite direction at one place are a touch. */
function merged(crossings: readonly ExactCrossing[]): ExactCrossing[] {
  const sorted = [...crossings].sort((a, b) => a.value.cmp(b.value));
  return sorted.reduce<ExactCrossing[]>((kept, next) => {
    const last = kept.at(-1);
    if (last === undefined || !last.value.eq(next.value)) return [...kept, next];
    const direction = last.direction === next.direction ? last.direction : 'touch';
    return [...kept.slice(0, -1), { value: last.value, direction, isJump: last.isJump || next.isJump }];
  }, []);
}

/**
 * Every value of an input at which a result meets a target, within a range.
 *
 * The range is scanned in float64 at two thousand places or more, evenly and by ratio; crossings closer together than
 * those places may be missed. Each change of side is then found exactly. At a jump the value given is on the side at or
 * above the target. A change of side at a pole, or across values that cannot be computed, is a break.
 *
 * @param given further inputs to scan, such as today's
 */
export function breakeven(
  curve: Curve,
  range: SearchRange,
  target: Decimal,
  given: readonly Decimal[] = [],
): ExactBreakeven {
  return finish(breakevenInSteps(curve, range, target, given));
}

/** The same in steps: one for the scan, then one for each change of side. */
export function* breakevenInSteps(
  curve: Curve,
  range: SearchRange,
  target: Decimal,
  given: readonly Decimal[] = [],
): Steps<ExactBreakeven> {
  const search = new Search(curve, range, target, given);
  if (search.closer.isAtTarget) return { range, crossings: [], breaks: [], holds: 'everywhere' };
  yield scanShare;
  const { touching, changes } = search.touches();
  const all = [...search.changes(), ...changes];
  const found: Found[] = [];
  for (const [i, change] of all.entries()) {
    yield scanShare + ((1 - scanShare) * i) / all.length;
    found.push(search.resolve(change));
  }
  const crossings = merged([...found.flatMap((one) => ('crossing' in one ? one.crossing : [])), ...touching]);
  const breaks = found.flatMap((one) => ('pole' in one ? one.pole : [])).sort((a, b) => a.cmp(b));
  return {
    range,
    crossings,
    breaks,
    holds: crossings.length + breaks.length > 0 ? null : holdsAt(search.closer),
  };
}

function holdsAt({ heights }: CloserScan): BreakevenPoints['holds'] {
  const known = heights.find((height) => !Number.isNaN(height));
  if (known === undefined) return null;
  return known >= 0 ? 'everywhere' : 'nowhere';
}
