import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { BreakevenPoints } from '../../study/breakeven';
import { plainly, say, sentences, type Phrase } from '../text/phrase';
import { spoken, spokenWithUnit } from '../text/spokenNumber';
import { decimalsFor } from '../text/digits';
import type { Format } from '../text/numberFormat';
import { inPerCent } from '../text/inPerCent';
import { endText } from '../text/rangeEnds';
import type { Claim } from './claim';
import { nearestTurn, sideAt, sidesOf, turnsOf, type Side } from './sides';

/** The input that moves. */
export interface Moved {
  readonly cell: Cell;
  readonly today: Decimal;
  /** Its own range; undefined where the number is a decision and has none. */
  readonly range: { readonly low: Decimal; readonly high: Decimal } | undefined;
}

/** At most this many changes of side are spelled out in a sentence. */
const spelledOut = 2;

/** A phrase with a capital at its start; a name is left as it is written. */
export function capital(phrase: Phrase): Phrase {
  const [first, ...rest] = phrase;
  if (first === undefined || first.strong) return phrase;
  return [{ ...first, text: first.text.charAt(0).toUpperCase() + first.text.slice(1) }, ...rest];
}

/** A crossing rounded to ten digits: the search may end very slightly beside a short number. */
function tidied(value: Decimal): Decimal {
  return value.toSignificantDigits(10);
}

/** Writes values of the input. Of two in one phrase only the second has the unit. */
class Values {
  constructor(
    private readonly cell: Cell,
    private readonly format: Format,
  ) {}

  one(value: Decimal): string {
    return spoken(tidied(value), this.cell.unit, this.format);
  }

  /** A change that leads to a value, with as many decimals as the value itself. */
  asFineAs(value: Decimal, change: Decimal): string {
    const coarse = this.format.fixed(change, decimalsFor(value, this.cell.unit));
    const number = /[1-9]/.test(coarse) ? coarse : this.format.value(change, this.cell.unit);
    return spokenWithUnit(number, this.cell.unitText);
  }

  bare(value: Decimal): string {
    return this.format.value(tidied(value), this.cell.unit);
  }

  between(a: Decimal, b: Decimal): Phrase {
    return say`between ${this.bare(a)} and ${this.one(b)}`;
  }
}

function withoutTurn({ range, holds }: BreakevenPoints, claim: Claim, { cell }: Moved, values: Values): Phrase {
  const over = values.between(range.from, range.to);
  if (holds === 'everywhere') return capital(say`${claim.above} at every ${cell.label} ${over}.`);
  if (holds === 'nowhere') return capital(claim.nowhere(cell.label, over));
  return say`Nothing can be computed for any ${cell.label} ${over}.`;
}

function oneTurn(at: Decimal, first: Side, claim: Claim, values: Values): Phrase {
  return first.above
    ? say`Below ${values.one(at)}, ${claim.above}; above, ${claim.not}.`
    : say`Above ${values.one(at)}, ${claim.above}; below, ${claim.not}.`;
}

function twoTurns(a: Decimal, b: Decimal, first: Side, claim: Claim, values: Values): Phrase {
  if (first.above)
    return say`Below ${values.bare(a)} and above ${values.one(b)}, ${claim.above}; between, ${claim.not}.`;
  return say`${capital(values.between(a, b))}, ${claim.above}; outside, ${claim.not}.`;
}

function manyTurns(found: BreakevenPoints, sides: readonly Side[], claim: Claim, moved: Moved, values: Values): Phrase {
  const count = plainly(String(sides.length - 1));
  const start = say`The answer changes side ${count} times ${values.between(found.range.from, found.range.to)}.`;
  const here = sideAt(sides, moved.today);
  if (here === undefined) return start;
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
  const values = new Values(moved.cell, format);
  const turns = turnsOf(found);
  const sides = sidesOf(found, { input: moved.today, above: isAboveToday });
  const [a, b] = turns;
  const [first] = sides;
  if (first === undefined || a === undefined) {
    const holds = found.holds ?? (found.crossings.length > 0 ? (isAboveToday ? 'everywhere' : 'nowhere') : null);
    return withoutTurn({ ...found, holds }, claim, moved, values);
  }
  if (turns.length > spelledOut) return manyTurns(found, sides, claim, moved, values);
  return b === undefined ? oneTurn(a.value, first, claim, values) : twoTurns(a.value, b.value, first, claim, values);
}

/** A change in per cent of a number; blank where that number is 0. */
export function percentOf(change: Decimal, base: Decimal, format: Format): string {
  if (base.isZero()) return '';
  const percent = change.dividedBy(base.abs()).times(100);
  return inPerCent(format.full(percent.toDecimalPlaces(percent.abs().gte(100) ? 0 : 1)));
}

/** How far the nearest change of side is from today's value, and whether it is within the input's range. */
export function distance(found: BreakevenPoints, { cell, today, range }: Moved, format: Format): Phrase {
  const turn = nearestTurn(found, today);
  if (turn === undefined) return [];
  const values = new Values(cell, format);
  const change = turn.value.minus(today);
  if (change.isZero()) return say`Today’s ${values.one(today)} stands right there.`;
  const percent = percentOf(change.abs(), today, format);
  const change1 = values.asFineAs(turn.value, change.abs());
  const far = percent === '' ? say`${change1}` : say`${change1} (${percent})`;
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
  const values = new Values(cell, format);
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

/** Where the line of one plan meets its target, in short, to follow the answer about both plans. */
export function inShort(
  found: BreakevenPoints,
  plan: string,
  result: Cell,
  target: Decimal,
  moved: Moved,
  format: Format,
): Phrase {
  const values = new Values(moved.cell, format);
  const at = target.isZero() ? plainly('0') : spoken(target, result.unit, format);
  const turns = turnsOf(found);
  const [first, ...rest] = turns;
  if (first === undefined) {
    if (found.holds === 'nowhere') return say`in ${plan} it stays below ${at}`;
    return found.holds === 'everywhere'
      ? say`in ${plan} it stays at or above ${at}`
      : say`in ${plan} it does not cross ${at}`;
  }
  const place = values.one(first.value);
  return rest.length === 0
    ? say`in ${plan} it crosses ${at} at ${place}`
    : say`in ${plan} it crosses ${at} at ${place} and ${plainly(String(rest.length))} more`;
}
