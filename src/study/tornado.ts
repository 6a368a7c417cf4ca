import { floatOf, type Decimal } from '../core/number';
import type { Question, Response } from '../model/response';
import { uncertain, type Lever } from '../model/view';

/** One bar of a tornado: what an uncertain input does to a result at the ends of its range, in one kind of number. */
export interface Bar<T> {
  readonly lever: Lever;
  readonly low: T;
  readonly high: T;
  /** The result at each end; NaN where it cannot be computed there. */
  readonly atLow: T;
  readonly atHigh: T;
  /** |atHigh − atLow|; NaN where an end cannot be computed. */
  readonly swing: T;
}

/** The inputs that a tornado varies, in file order: those with a range on which the result depends. */
function varied(question: Question): { lever: Lever; low: Decimal; high: Decimal; response: Response }[] {
  return uncertain(question.view).flatMap((lever) => {
    const response = question.response([lever]);
    return lever.range !== undefined && response.depends ? [{ lever, ...lever.range, response }] : [];
  });
}

/** Largest swing first, ties in file order, bars with an end that cannot be computed last. */
function sorted<T>(bars: Bar<T>[], compare: (a: T, b: T) => number): Bar<T>[] {
  return bars.sort((a, b) => {
    const order = compare(b.swing, a.swing);
    return Number.isNaN(order) ? Number(isUnknown(a.swing)) - Number(isUnknown(b.swing)) : order;
  });
}

function isUnknown(swing: unknown): boolean {
  return Number.isNaN(Number(swing));
}

/**
 * A tornado, one-at-a-time sensitivity: each uncertain input at its low and its high end, all others at today's
 * numbers. What the ends mean depends on the range's shape: the ends themselves, or the 5th and 95th percentile for
 * normal and lognormal.
 * @returns exact bars, largest swing first
 */
export function tornado(question: Question): Bar<Decimal>[] {
  const bars = varied(question).map(({ lever, low, high, response }) => {
    const atLow = response.exact([low]);
    const atHigh = response.exact([high]);
    return { lever, low, high, atLow, atHigh, swing: atHigh.minus(atLow).abs() };
  });
  return sorted(bars, (a, b) => a.cmp(b));
}

/** The same bars in float64, fast enough to draw with every keystroke. */
export function quickTornado(question: Question): Bar<number>[] {
  const bars = varied(question).map(({ lever, low, high, response }) => {
    const [from, to] = [floatOf(low), floatOf(high)];
    const atLow = response.float([from]);
    const atHigh = response.float([to]);
    return { lever, low: from, high: to, atLow, atHigh, swing: Math.abs(atHigh - atLow) };
  });
  return sorted(bars, (a, b) => a - b);
}
