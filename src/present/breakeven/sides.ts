import type { Decimal } from '../../core/number';
import type { BreakevenPoints } from '../../study/breakeven';

/** A place where a line changes side. */
export interface Turn {
  readonly value: Decimal;
  readonly kind: 'crossing' | 'break';
}

/** A part of the searched range over which a line stays on one side of the target. */
export interface Side {
  readonly from: Decimal;
  readonly to: Decimal;
  readonly above: boolean;
}

/** The places where a line changes side, ascending, without mere touches. */
export function turnsOf({ crossings, breaks }: BreakevenPoints): Turn[] {
  const crossed = crossings.filter(({ direction }) => direction !== 'touch');
  const turns = [
    ...crossed.map(({ value }): Turn => ({ value, kind: 'crossing' })),
    ...breaks.map((value): Turn => ({ value, kind: 'break' })),
  ];
  return turns.sort((a, b) => a.value.cmp(b.value));
}

/** Whether a line starts above the target, by the direction of its first crossing, or else by its side today. */
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

/** The parts of the range, ascending; each is on the other side than the one before it. */
export function sidesOf(found: BreakevenPoints, today: { readonly input: Decimal; readonly above: boolean }): Side[] {
  const turns = turnsOf(found);
  const start = startsAbove(found, turns, today);
  const ends = [found.range.from, ...turns.map(({ value }) => value), found.range.to];
  return ends.slice(1).map((to, i) => ({ from: ends[i]!, to, above: start === (i % 2 === 0) }));
}

/** Whether a part is an end of the range by itself: the line changes side right beside it. */
export function isPoint({ from, to }: Side): boolean {
  return from.eq(to);
}

/** The part in which an input lies. */
export function sideAt(sides: readonly Side[], input: Decimal): Side | undefined {
  const holds = ({ from, to }: Side): boolean => input.gte(from) && input.lte(to);
  return sides.find((side) => isPoint(side) && holds(side)) ?? sides.find(holds);
}

/** The change of side nearest to an input. */
export function nearestTurn(found: BreakevenPoints, input: Decimal): Turn | undefined {
  const far = ({ value }: Turn): Decimal => value.minus(input).abs();
  return turnsOf(found).reduce<Turn | undefined>(
    (best, turn) => (best === undefined || far(turn).lt(far(best)) ? turn : best),
    undefined,
  );
}
