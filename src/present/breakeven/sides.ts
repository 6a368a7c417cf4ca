import type { Decimal } from '../../core/number';
import type { BreakevenPoints } from '../../study/breakeven';

/** A place where a line changes side. */
export interface Turn {
  readonly value: Decimal;
  readonly kind: 'crossing' | 'break';
}

/** The side of the target on which a line stands over a part of the range that was searched. */
export interface Side {
  readonly from: Decimal;
  readonly to: Decimal;
  readonly above: boolean;
}

/** The places where a line changes side, ascending; where it only touches the target it does not. */
export function turnsOf({ crossings, breaks }: BreakevenPoints): Turn[] {
  const crossed = crossings.filter(({ direction }) => direction !== 'touch');
  const turns = [
    ...crossed.map(({ value }): Turn => ({ value, kind: 'crossing' })),
    ...breaks.map((value): Turn => ({ value, kind: 'break' })),
  ];
  return turns.sort((a, b) => a.value.cmp(b.value));
}

/** Whether a line starts above the target: from the first crossing's direction, or else from where it stands today. */
function startsAbove(
  found: BreakevenPoints,
  turns: readonly Turn[],
  today: { input: Decimal; above: boolean },
): boolean {
  const first = turns.findIndex(({ kind }) => kind === 'crossing');
  const crossing = found.crossings.find(({ direction }) => direction !== 'touch');
  if (crossing !== undefined) return (crossing.direction === 'down') === (first % 2 === 0);
  const before = turns.filter(({ value }) => value.lte(today.input)).length;
  return today.above === (before % 2 === 0);
}

/** The parts of the range by side, ascending; the side changes from each to the next. */
export function sidesOf(found: BreakevenPoints, today: { readonly input: Decimal; readonly above: boolean }): Side[] {
  const turns = turnsOf(found);
  const start = startsAbove(found, turns, today);
  const ends = [found.range.from, ...turns.map(({ value }) => value), found.range.to];
  return ends.slice(1).map((to, i) => ({ from: ends[i]!, to, above: start === (i % 2 === 0) }));
}

/** The side on which the line stands today. */
export function sideAt(sides: readonly Side[], input: Decimal): Side | undefined {
  return sides.find(({ from, to }) => input.gte(from) && input.lte(to));
}

/** The place nearest to today where a line changes side. */
export function nearestTurn(found: BreakevenPoints, input: Decimal): Turn | undefined {
  const far = ({ value }: Turn): Decimal => value.minus(input).abs();
  return turnsOf(found).reduce<Turn | undefined>(
    (best, turn) => (best === undefined || far(turn).lt(far(best)) ? turn : best),
    undefined,
  );
}
