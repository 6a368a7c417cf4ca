import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { BreakevenPoints } from '../../study/breakeven';
import { plainly, say, type Phrase } from '../text/phrase';
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
  if (holds === 'nowhere') return capital(say`${claim.above} at no ${cell.label} ${over}.`);
  return say`Nothing can be computed for any ${cell.label} ${over}.`;
}

function oneTurn(at: Decimal, first: Side, claim: Claim, values: Values): Phrase {
  const [yes, no] = first.above ? [wording`Below`, 'above'] : [wording`Above`, 'below'];
  return say`${plainly(yes)} ${values.one(at)}, ${claim.above}; ${plainly(no)}, ${claim.not}.`;
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
  return say`${start} ${stretch}, around today, ${here.above ? claim.above : claim.below}.`;
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
  const which = turnsOf(found).length > 1 ? say`the nearest, ${values.one(turn.value)}, is` : plainly(wording`that is`);
  const way = plainly(change.gt(0) ? wording`a rise` : wording`a fall`);
  const far = values.asFineAs(turn.value, change.abs());
  const percent = percentOf(change.abs(), today, format);
  const share = percent === '' ? [] : say` (${percent})`;
  return say`From today’s ${values.one(today)}, ${which} ${way} of ${far}${share}${ranged(turn.value, cell, range, format)}.`;
}

function ranged(value: Decimal, cell: Cell, range: Moved['range'], format: Format): Phrase {
  if (range === undefined) return [];
  const inside = value.gte(range.low) && value.lte(range.high);
  const high = spokenWithUnit(endText(range.high, cell, format), cell.unitText, false);
  const ends = say`${endText(range.low, cell, format)} to ${high}`;
  return say`, ${plainly(inside ? 'inside' : 'outside')} its range of ${ends}`;
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
  return parts.flatMap((part, i) => (i === 0 ? part : [...plainly(' '), ...part]));
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
    const stays =
      found.holds === 'nowhere'
        ? wording`stays below`
        : found.holds === 'everywhere'
          ? wording`stays at or above`
          : wording`does not cross`;
    return say`in ${plan} it ${plainly(stays)} ${at}`;
  }
  const more = rest.length === 0 ? [] : plainly(wording` and ${decimal(rest.length).toString()} more`);
  return say`in ${plan} it crosses ${at} at ${values.one(first.value)}${more}`;
}
