import { decimal, numberToText, type Decimal } from '../../core/number';
import { rangeAround, type RangeTexts } from '../../model/change/ranges';
import type { RangeRule } from './askedFigures';

/** How far a figure may lie off to each side, in per cent of it. */
export const reachOf = { measured: 20, time: 10 } as const;

const all = decimal(100);

/** The share that is kept where some is lost, both in per cent. */
export function keptOf(lost: Decimal): Decimal {
  return all.minus(lost);
}

/**
 * The range around a figure that is given; undefined for a decision and where the figure is 0, which is then certain.
 * Of a loss half of it is the least and one and a half times it the most that may be lost.
 * @param given a loss as the share lost, in per cent; anything else in the unit of its entry
 */
export function rangeOf(rule: RangeRule, given: Decimal, unit: string): RangeTexts | undefined {
  if (rule === 'decision' || given.isZero()) return undefined;
  if (rule !== 'loss') return rangeAround(given, reachOf[rule], unit);
  const most = given.times(1.5);
  const low = keptOf(most.gt(all) ? all : most);
  return { low: numberToText(low), high: numberToText(keptOf(given.div(2))) };
}
