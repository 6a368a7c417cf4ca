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

type Found = { readonly crossing: Crossing } | { readonly pole: Decimal };

/** A share of the largest height below which float64 is not trusted to tell the side. */
const doubt = 1e-9;
/** How much wider than the bracket one looks to tell a root, a jump and a pole apart; the growth that makes a pole. */
const wider = decimal('1e6');
const poleGrowth = 10;

/** One search: the curve less the target, with what counts as being at it. */
class Search {
  readonly isAbove: IsAbove;
  private readonly span: Decimal;

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
  }

  readonly height = (x: Decimal): Decimal => this.curve.exact(x).minus(this.target);

  /** The scanned places, computed exactly where float64 is in doubt or finds a change of side. */
  places(): Place[] {
    const { xs, heights, largest } = this.looked;
    const near = (i: number): boolean => Math.abs(heights[i] ?? NaN) <= doubt * largest;
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
    if (this.isPole(a, b, from, to)) return { pole: this.tidy(a.x.plus(b.x).dividedBy(2)) };
    return { crossing: { value: this.valueBetween(a, b), direction: this.isAbove(b.y) ? 'up' : 'down' } };
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

  /** A pole grows without bound as the bracket closes; a jump stays as it is; a root shrinks. */
  private isPole(a: Place, b: Place, from: Place, to: Place): boolean {
    const reach = b.x.minus(a.x).times(wider);
    const before = a.x.minus(reach).lt(from.x) ? from.x : a.x.minus(reach);
    const after = b.x.plus(reach).gt(to.x) ? to.x : b.x.plus(reach);
    const around = this.height(after).minus(this.height(before)).abs();
    return b.y.minus(a.y).abs().gt(around.times(poleGrowth)) && !around.isNaN();
  }

  /** The shortest number in a closed bracket; at a jump, one on the side that reaches the target. */
  private valueBetween(a: Place, b: Place): Decimal {
    const reached = this.isAbove(b.y) ? b : a;
    const tidy = this.tidy(reached.x);
    return this.isAbove(this.height(tidy)) ? tidy : reached.x;
  }

  tidy(x: Decimal): Decimal {
    return shortestNear(x, this.precision.tidy, this.span);
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
