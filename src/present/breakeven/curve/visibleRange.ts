import type { Decimal } from '../../../core/number';
import { roundStepAbove } from '../../../core/roundStep';
import type { Lever } from '../../../model/view';
import type { SearchRange } from '../../../study/searchRange';
import type { Point, InputInterval } from './sample';

/** The part drawn reaches this many times as far from today's number as the input's own range. */
const widening = 2;
/** Room beyond a crossing, as a share of its distance from today's value. */
const beyond = 0.5;
/** A step may be smaller than a twelfth of the part drawn by less than a thousandth. */
const enough = 0.999;

/** An interval widened to multiples of a round step, within limits. */
function rounded({ from, to }: InputInterval, limits: InputInterval): InputInterval {
  const step = roundStepAbove((to - from) / 12, enough);
  const outward = { from: Math.floor(from / step + 1e-9) * step, to: Math.ceil(to / step - 1e-9) * step };
  return { from: Math.max(outward.from, limits.from), to: Math.min(outward.to, limits.to) };
}

/**
 * The part of a searched range that is drawn unless someone asks for another: today's value, the input's own range with
 * some room, and the crossing nearest to today. It ends at round numbers, so that it does not move with every small
 * change.
 */
export function visiblePart(
  { base, range }: Lever,
  searched: InputInterval,
  crossings: readonly number[],
): InputInterval {
  const today = base.toNumber();
  const [low, high] = [range?.low.toNumber() ?? today * 0.75, range?.high.toNumber() ?? today * 1.25];
  const [nearest] = [...crossings].sort((a, b) => Math.abs(a - today) - Math.abs(b - today));
  const ends = [today - widening * (today - low), today + widening * (high - today), today, low, high];
  if (nearest !== undefined) ends.push(nearest + beyond * (nearest - today));
  const inside = ends.map((end) => Math.min(Math.max(end, searched.from), searched.to));
  const [from, to] = [Math.min(...inside), Math.max(...inside)];
  return to > from ? rounded({ from, to }, searched) : searched;
}

/** What is drawn where someone has set the range: all of it, extended to today's value. */
export function wholeRange({ from, to }: SearchRange, today: Decimal): InputInterval {
  const places = [from, to, today].map((x) => x.toNumber());
  return { from: Math.min(...places), to: Math.max(...places) };
}

/** Beyond the middle eight tenths, heights are shown up to this many times the spread of those. */
const reach = 1;
const room = 0.08;

function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.round(share * (sorted.length - 1))] ?? 0;
}

/**
 * The range of heights that is drawn: all points, unless a few lie far out, as beside a pole.
 * @param always heights that must be in sight
 */
export function visibleHeights(
  lines: readonly (readonly Point[])[],
  always: readonly number[],
): { min: number; max: number } {
  const sorted = lines
    .flat()
    .map(({ y }) => y)
    .filter((y) => !Number.isNaN(y))
    .sort((a, b) => a - b);
  const [low, high] = [quantile(sorted, 0.1), quantile(sorted, 0.9)];
  const spread = high - low;
  const lowest = Math.max(sorted[0] ?? 0, low - reach * spread);
  const highest = Math.min(sorted.at(-1) ?? 0, high + reach * spread);
  const ends = [lowest, highest, ...always];
  const [min, max] = [Math.min(...ends), Math.max(...ends)];
  const margin = max > min ? (max - min) * room : Math.abs(max) / 10 || 1;
  return { min: min - margin, max: max + margin };
}
