import { decimal, type Decimal } from '../core/number';
import { drawTogether, shortestNear, type IsAbove, type Place } from './bracket';
import { exactPrecision, type Curve, type Precision } from './curve';
import { scan, type Scan } from './scan';
import type { SearchRange } from './searchRange';
import { touches } from './touch';

/** A place where the result comes to the target: from below, from above, or only touching it. */
export interface Crossing {
  readonly value: Decimal;
  /** As the input rises. */
  readonly direction: 'up' | 'down' | 'touch';
}

/** Where a result is at or above a target, as one input moves over a range. */
export interface Breakeven {
  readonly range: SearchRange;
  /** Ascending. */
  readonly crossings: readonly Crossing[];
  /** Inputs at which the result changes side at a pole or across values that cannot be computed; ascending. */
  readonly breaks: readonly Decimal[];
  /** Without crossings and breaks: whether the result is at or above the target; null otherwise. */
  readonly holds: 'everywhere' | 'nowhere' | null;
}

/** A change of side between two scanned places, or across places that cannot be computed. */
interface Change {
  readonly from: Place;
  readonly to: Place;
  readonly gap: Decimal | undefined;
}

const zero = decimal(0);

type Found = { readonly crossing: Crossing } | { readonly pole: Decimal };

/** A share of the largest height below which float64 is not trusted to tell the side. */
const doubt = 1e-9;
/** A share of the numbers looked at below which all that float64 sees may be its own rounding. */
const floatNoise = 1e-13;
/** How much wider than the bracket, or which share of the input, one looks to tell a root, a jump and a pole apart. */
const wider = decimal('1e6');
const beyondTies = decimal('1e-9');
/** A result that changes more across the bracket than this often as much as around it has a pole there. */
const poleGrowth = 10;
/** One that changes at least this share as much has a jump there. */
const jumpShare = decimal('1e-3');
/** Comparisons and rounding take numbers this near as equal, so that a jump lies that far beside its number. */
const tieReach = decimal('1.5e-12');
/** Results all this small beside the numbers they come from are rounding of a result that is at the target. */
const roundingShare = decimal('1e-30');

/** One search: the curve less the target, with what counts as being at it. */
class Search {
  readonly isAbove: IsAbove;
  private readonly span: Decimal;
  /** The largest of the range's ends and the target. */
  private readonly size: Decimal;

  constructor(
    private readonly curve: Curve,
    range: SearchRange,
    private readonly target: Decimal,
    private readonly looked: Scan,
    private readonly precision: Precision,
  ) {
    const noise = precision.noise.times(looked.largest).negated();
    this.isAbove = (y) => y.gte(noise);
    this.span = range.to.minus(range.from);
    this.size = [range.from, range.to, target].map((x) => x.abs()).reduce((most, x) => (x.gt(most) ? x : most));
  }

  readonly height = (x: Decimal): Decimal => this.curve.exact(x).minus(this.target);

  /** The scanned places, computed exactly where float64 is in doubt or finds a change of side. */
  places(): Place[] {
    const { xs, heights, largest } = this.looked;
    const allNear = largest <= floatNoise * this.size.toNumber();
    const near = (i: number): boolean => allNear || Math.abs(heights[i] ?? NaN) <= doubt * largest;
    const turns = (i: number, j: number): boolean => (heights[i] ?? 0) >= 0 !== (heights[j] ?? 0) >= 0;
    return xs.map((x, i) => {
      const y = heights[i] ?? NaN;
      const unsure =
        Number.isNaN(y) || near(i) || turns(i, Math.max(i - 1, 0)) || turns(i, Math.min(i + 1, xs.length - 1));
      return { x, y: unsure ? this.height(x) : decimal(y) };
    });
  }

  changes(places: readonly Place[]): Change[] {
    const found: Change[] = [];
    let before: Place | undefined;
    let gap: Decimal | undefined;
    for (const place of places) {
      if (place.y.isNaN()) gap ??= place.x;
      else {
        if (before !== undefined && this.isAbove(before.y) !== this.isAbove(place.y))
          found.push({ from: before, to: place, gap });
        before = place;
        gap = undefined;
      }
    }
    return found;
  }

  resolve({ from, to, gap }: Change): Found {
    if (gap !== undefined) return { pole: this.edge(from.x, gap) };
    const { a, b, unknown } = drawTogether(this.height, from, to, this.isAbove, this.precision);
    if (unknown !== undefined) return { pole: this.edge(a.x, unknown) };
    const across = b.y.minus(a.y).abs();
    const around = this.changeAround(a, b, from, to);
    if (across.gt(around.times(poleGrowth))) return { pole: this.poleAt(b.x) };
    const isJump = across.gte(around.times(jumpShare));
    return { crossing: { value: this.valueBetween(a, b, isJump), direction: this.isAbove(b.y) ? 'up' : 'down' } };
  }

  /** Where a curve stops being computable, between a place where it is and one where it is not. */
  private edge(known: Decimal, unknown: Decimal): Decimal {
    let [inside, outside] = [known, unknown];
    for (let step = 0; step < 100; step += 1) {
      const middle = inside.plus(outside).dividedBy(2);
      if (middle.eq(inside) || middle.eq(outside)) break;
      if (this.height(middle).isNaN()) outside = middle;
      else inside = middle;
    }
    return this.tidy(outside);
  }

  /** How much the result changes over a stretch some way wider than a bracket, but within the scanned places. */
  private changeAround(a: Place, b: Place, from: Place, to: Place): Decimal {
    const byWidth = b.x.minus(a.x).times(wider);
    const byShare = b.x.abs().times(beyondTies);
    const reach = byWidth.gt(byShare) ? byWidth : byShare;
    const before = a.x.minus(reach).lt(from.x) ? from.x : a.x.minus(reach);
    const after = b.x.plus(reach).gt(to.x) ? to.x : b.x.plus(reach);
    return this.height(after).minus(this.height(before)).abs();
  }

  /** The shortest number in a closed bracket; at a jump, one on the side that reaches the target. */
  private valueBetween(a: Place, b: Place, isJump: boolean): Decimal {
    const reached = this.isAbove(b.y) ? b : a;
    if (a.x.lte(0) && b.x.gte(0) && this.isAbove(this.height(zero))) return zero;
    const shares = isJump ? [tieReach, this.precision.tidy] : [this.precision.tidy];
    const candidates = shares.map((share) => shortestNear(reached.x, share, this.span));
    return candidates.find((x) => this.isAbove(this.height(x))) ?? reached.x;
  }

  /** A pole's place; where a comparison fills in a value at it, the number compared with. */
  private poleAt(x: Decimal): Decimal {
    const filled = shortestNear(x, tieReach, this.span);
    const height = this.height(filled);
    return height.isNaN() || height.isZero() ? filled : this.tidy(x);
  }

  tidy(x: Decimal): Decimal {
    return shortestNear(x, this.precision.tidy, this.span);
  }

  /** Whether nothing but rounding parts the result from the target, at every place. */
  isAtTarget(places: readonly Place[]): boolean {
    return places.every(({ y }) => !y.isNaN() && y.abs().lte(this.size.times(roundingShare)));
  }

  searchTouches(places: readonly Place[]): { touching: Crossing[]; changes: Change[] } {
    const found = touches(places, this.height, (x) => this.curve.float(x) - this.target.toNumber(), this.isAbove);
    const touching = found.touching.map((x): Crossing => ({ value: this.tidy(x), direction: 'touch' }));
    return { touching, changes: found.changes.map(([from, to]) => ({ from, to, gap: undefined })) };
  }
}

/** Two crossings of opposite direction at one place are a touch. */
function merged(crossings: readonly Crossing[]): Crossing[] {
  const sorted = [...crossings].sort((a, b) => a.value.cmp(b.value));
  return sorted.reduce<Crossing[]>((kept, next) => {
    const last = kept.at(-1);
    if (last === undefined || !last.value.eq(next.value)) return [...kept, next];
    const direction = last.direction === next.direction ? last.direction : 'touch';
    return [...kept.slice(0, -1), { value: last.value, direction }];
  }, []);
}

/**
 * Every value of an input at which a result comes to a target, within a range.
 *
 * The range is looked at in float64, at more than a thousand places evenly and by ratio; crossings closer together than
 * that may be missed. Each change of side is closed in on exactly. At a jump the value is on the side that reaches the
 * target; a change of side at a pole, or across values that cannot be computed, is a break.
 *
 * @param given inputs that are looked at besides, such as today's
 */
export function breakeven(
  curve: Curve,
  range: SearchRange,
  target: Decimal,
  given: readonly Decimal[] = [],
  precision = exactPrecision,
): Breakeven {
  const looked = scan(curve, range, target.toNumber(), given);
  const search = new Search(curve, range, target, looked, precision);
  const places = search.places();
  if (search.isAtTarget(places)) return { range, crossings: [], breaks: [], holds: 'everywhere' };
  const { touching, changes } = search.searchTouches(places);
  const found = [...search.changes(places), ...changes].map((change) => search.resolve(change));
  const crossings = merged([...found.flatMap((one) => ('crossing' in one ? one.crossing : [])), ...touching]);
  const breaks = found.flatMap((one) => ('pole' in one ? one.pole : [])).sort((a, b) => a.cmp(b));
  return {
    range,
    crossings,
    breaks,
    holds: crossings.length + breaks.length > 0 ? null : holdsAt(places, search.isAbove),
  };
}

function holdsAt(places: readonly Place[], isAbove: IsAbove): Breakeven['holds'] {
  const known = places.find(({ y }) => !y.isNaN());
  if (known === undefined) return null;
  return isAbove(known.y) ? 'everywhere' : 'nowhere';
}
