import { exact } from '../core/exact';
import { decimal, type Decimal } from '../core/number';
import type { Question, Response } from '../model/response';
import type { Lever } from '../model/view';

/** One place of a spider line. */
export interface SpiderPlace {
  /** Change of the input from today, in per cent of today's number. */
  readonly change: Decimal;
  readonly input: Decimal;
  /** NaN where it cannot be computed. */
  readonly result: Decimal;
}

/** The effect of equal changes of an input to either side of today's number. */
export interface Bend {
  /** Change of the input, in per cent, above 0. */
  readonly change: Decimal;
  /** Change of the result where the input falls by that change, and where it rises by it; 0 for a tie. */
  readonly less: Decimal;
  readonly more: Decimal;
}

/** A result as one input changes in per cent of its number today, over its own range only. */
export interface SpiderLine {
  readonly lever: Lever;
  /** Ascending in the change. Both ends of the range are among them, and today's number where it lies inside. */
  readonly places: readonly SpiderPlace[];
  /** Mean change of the result for each per cent, between the ends of the range; NaN where an end is unknown. */
  readonly slope: Decimal;
  /** Undefined where today's number is not inside the range. */
  readonly bend: Bend | undefined;
}

/** Steps of a line between the ends of the range. */
const steps = 40;
const hundred = decimal(100);
/**
 * An input computed from a change in per cent is rounded to this many digits, fewer than the arithmetic has, so that an
 * end of a range comes back unchanged.
 */
const digits = 30;

/** Changes in per cent this close are the same: one number reached by two computations. */
const near = decimal('1e-20');

function isSame(a: Decimal, b: Decimal): boolean {
  return a.minus(b).abs().lte(near);
}

function percentOf(input: Decimal, base: Decimal): Decimal {
  return input.minus(base).dividedBy(base).times(hundred);
}

/** Evenly spaced numbers from one to another, without the last. */
function evenly(from: Decimal, to: Decimal, count: number): Decimal[] {
  return Array.from({ length: count }, (_, k) => from.plus(to.minus(from).times(k).dividedBy(count)));
}

/**
 * The changes to compute: half of the steps on either side of today's number where it lies inside the range, and the
 * change that the range allows in both directions.
 */
function changesIn(low: Decimal, high: Decimal, reach: Decimal | undefined): Decimal[] {
  if (reach === undefined) return [...evenly(low, high, steps), high];
  const zero = decimal(0);
  const even = [...evenly(low, zero, steps / 2), ...evenly(zero, high, steps / 2)];
  const all = [...even, high, reach.negated(), reach];
  const sorted = all.sort((a, b) => a.cmp(b));
  return sorted.filter((change, i) => i === 0 || !isSame(change, sorted[i - 1] as Decimal));
}

/** The change in per cent that a range allows in both directions; undefined where today's number is not inside it. */
function reachOf(low: Decimal, high: Decimal): Decimal | undefined {
  if (!(low.lt(0) && high.gt(0))) return undefined;
  return low.negated().lt(high) ? low.negated() : high;
}

function bendOf(places: readonly SpiderPlace[], reach: Decimal | undefined, { base }: Response): Bend | undefined {
  if (reach === undefined) return undefined;
  const at = (change: Decimal): Decimal => places.find((place) => isSame(place.change, change))?.result ?? decimal(NaN);
  const moved = (result: Decimal): Decimal => (exact.compare(result, base) === 0 ? decimal(0) : result.minus(base));
  return { change: reach, less: moved(at(reach.negated())), more: moved(at(reach)) };
}

/**
 * A spider line: the result against the change of one input in per cent of its number today, the others as they stand
 * (Eschenbach, Spiderplots versus tornado diagrams for sensitivity analysis, Interfaces 22 (1992) 40-46: each line over
 * the input's own range only).
 * @param lever an input with a range
 * @param quick in float64 throughout, for drawing
 * @yields after each place, so that exact numbers can be made a few at a time
 * @returns undefined where today's number is 0, so that no change is a share of it, and where the range has no width
 */
export function* spiderLine(
  question: Question,
  lever: Lever,
  quick = false,
): Generator<undefined, SpiderLine | undefined> {
  const { base, range } = lever;
  if (range === undefined || base.isZero() || range.low.eq(range.high)) return undefined;
  const response = question.response([lever]);
  const ends = [percentOf(range.low, base), percentOf(range.high, base)] as const;
  const [low, high] = base.isNegative() ? [ends[1], ends[0]] : ends;
  const reach = reachOf(low, high);
  const places: SpiderPlace[] = [];
  for (const change of changesIn(low, high, reach)) {
    const input = base.plus(base.times(change).dividedBy(hundred)).toSignificantDigits(digits);
    const result = quick ? known(response.float([input.toNumber()])) : response.exact([input]);
    places.push({ change, input, result });
    yield;
  }
  const [first, last] = [places[0] as SpiderPlace, places.at(-1) as SpiderPlace];
  const slope = last.result.minus(first.result).dividedBy(high.minus(low));
  return { lever, places, slope, bend: bendOf(places, reach, response) };
}

function known(result: number): Decimal {
  return decimal(Number.isFinite(result) ? result : NaN);
}
