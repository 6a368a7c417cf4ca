import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { BreakevenPoints } from '../../study/breakeven';
import { capital, plainly, say, sentences, type Phrase } from '../text/phrase';
import { spokenWithUnit } from '../text/spokenNumber';
import type { Format } from '../text/numberFormat';
import { endText } from '../text/rangeEnds';
import type { Claim } from './claim';
import { withEnds } from './ends';
import { InputValues } from './inputValues';
import type { Moved } from './moved';
import { isPoint, nearestTurn, sideAt, sidesOf, turnsOf, type Side } from './sides';

/** At most this many changes of side are spelled out in a sentence. */
const spelledOut = 2;

function withoutTurn({ range, holds }: BreakevenPoints, claim: Claim, { cell }: Moved, values: InputValues): Phrase {
  const over = values.between(range.from, range.to);
  if (holds === 'everywhere') return capital(say`${claim.above} at every ${cell.label} ${over}.`);
  if (holds === 'nowhere') return capital(claim.nowhere(cell.label, over));
  return say`Nothing can be computed for any ${cell.label} ${over}.`;
}

function oneTurn(at: Decimal, first: Side, claim: Claim, values: InputValues): Phrase {
  return first.above
    ? say`Below ${values.one(at)}, ${claim.above}; above, ${claim.not}.`
    : say`Above ${values.one(at)}, ${claim.above}; below, ${claim.not}.`;
}

function twoTurns(a: Decimal, b: Decimal, first: Side, claim: Claim, values: InputValues): Phrase {
  if (first.above)
    return say`Below ${values.bare(a)} and above ${values.one(b)}, ${claim.above}; between, ${claim.not}.`;
  return say`${capital(values.between(a, b))}, ${claim.above}; outside, ${claim.not}.`;
}

function manyTurns(
  found: BreakevenPoints,
  sides: readonly Side[],
  claim: Claim,
  moved: Moved,
  values: InputValues,
): Phrase {
  const count = plainly(String(sides.length - 1));
  const start = say`The answer changes side ${count} times ${values.between(found.range.from, found.range.to)}.`;
  const here = sideAt(sides, moved.today);
  if (here === undefined) return start;
  if (isPoint(here)) {
    const at = values.one(here.from);
    return sentences(start, say`At today’s ${at}, ${here.above ? claim.above : claim.below}.`);
  }
  const stretch = capital(values.between(here.from, here.to));
  return sentences(start, say`${stretch}, around today, ${here.above ? claim.above : claim.below}.`);
}

/** Where a line is at or above its target, as a sentence. */
export function answer(
  found: BreakevenPoints,
  claim: Claim,
  moved: Moved,
  isAboveToday: boolean,
  format: Format,
): Phrase {
  const values = new InputValues(moved.cell, format);
  const turns = turnsOf(found);
  const sides = sidesOf(found, { input: moved.today, above: isAboveToday });
  const [a, b] = turns;
  const [first] = sides;
  if (first === undefined || a === undefined) {
    const holds = found.holds ?? (found.crossings.length > 0 ? (isAboveToday ? 'everywhere' : 'nowhere') : null);
    return withoutTurn({ ...found, holds }, claim, moved, values);
  }
  const ends = sides.filter(isPoint).length;
  if (turns.length - ends > spelledOut) return manyTurns(found, sides, claim, moved, values);
  if (ends > 0) return withEnds(sides, claim, moved, values);
  return b === undefined ? oneTurn(a.value, first, claim, values) : twoTurns(a.value, b.value, first, claim, values);
}

/** How far the nearest change of side is from today's value, and whether it is within the input's range. */
export function distance(found: BreakevenPoints, { cell, today, range }: Moved, format: Format): Phrase {
  const turn = nearestTurn(found, today);
  if (turn === undefined) return [];
  const values = new InputValues(cell, format);
  const change = turn.value.minus(today);
  if (change.isZero()) return say`Today’s ${values.one(today)} stands right there.`;
  const far = say`${values.distance(turn.value, today)}`;
  const [from, where] = [values.one(today), ranged(turn.value, cell, range, format)];
  if (turnsOf(found).length > 1) {
    const nearest = values.one(turn.value);
    return change.gt(0)
      ? say`From today’s ${from}, the nearest, ${nearest}, is a rise of ${far}${where}.`
      : say`From today’s ${from}, the nearest, ${nearest}, is a fall of ${far}${where}.`;
  }
  return change.gt(0)
    ? say`From today’s ${from}, that is a rise of ${far}${where}.`
    : say`From today’s ${from}, that is a fall of ${far}${where}.`;
}

function ranged(value: Decimal, cell: Cell, range: Moved['range'], format: Format): Phrase {
  if (range === undefined) return [];
  const high = spokenWithUnit(endText(range.high, cell, format), cell.unitText, false);
  const low = endText(range.low, cell, format);
  return value.gte(range.low) && value.lte(range.high)
    ? say`, inside its range of ${low} to ${high}`
    : say`, outside its range of ${low} to ${high}`;
}

/** Breaks and touches that a search found, in words. */
export function besides(
  { crossings, breaks }: BreakevenPoints,
  { cell }: Moved,
  target: string | Phrase,
  format: Format,
): Phrase {
  const values = new InputValues(cell, format);
  const touches = crossings.filter(({ direction }) => direction === 'touch').map(({ value }) => value);
  const parts = [
    ...breaks
      .slice(0, spelledOut)
      .map(
        (value) => say`At ${values.one(value)} it changes side without meeting ${target}: there it cannot be computed.`,
      ),
    ...touches
      .slice(0, spelledOut)
      .map((value) => say`At ${values.one(value)} it comes just to ${target} and turns back.`),
  ];
  return sentences(...parts);
}
