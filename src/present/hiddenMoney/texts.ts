import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { link, sayLinked, type LinkedPhrase } from '../text/linkedPhrase';
import type { Format } from '../text/numberFormat';
import { plainly, say, type Phrase } from '../text/phrase';
import { days, shown } from '../text/quantities';
import { spoken, spokenWithUnit } from '../text/spokenNumber';
import type { Effect } from './effect';
import { daysPerWeek } from '../../trade/week';

/** What is said of what may flatter an answer. */
export const hiddenMoneyTexts = {
  heading: wording`What this answer may hide`,
  /** Above a folded list. */
  count: (count: number) => wording`${count} things to know before you trust this answer`,
} as const;

/** `Were it 3 % a day, the difference in Margin would be 120 EUR a year instead of 3,007.` */
export function effectPhrase(
  were: Phrase,
  result: Cell,
  isDifference: boolean,
  effect: Effect,
  format: Format,
): Phrase {
  const label = plainly(result.label);
  const now = plainly(format.value(effect.now, result.unit));
  const then = spoken(effect.then, result.unit, format);
  return isDifference
    ? say`${were}, the difference in ${label} would be ${then} instead of ${now}.`
    : say`${were}, ${label} would be ${then} instead of ${now}.`;
}

/** A crop's time in days, or in weeks where the entry of its last stage is in weeks. */
function cropDays(time: Decimal, last: Cell | undefined, format: Format): Phrase {
  if (last?.unitText !== 'week') return plainly(days(time, format));
  return plainly(spokenWithUnit(shown(time.dividedBy(daysPerWeek), 2, format), last.unitText));
}

/** Two plans whose crops take a different time. */
export function timesDifferPhrase(
  names: readonly [plan: string, against: string],
  times: readonly [plan: Decimal, against: Decimal],
  last: Cell | undefined,
  format: Format,
): LinkedPhrase {
  const [own, other] = times.map((time) => cropDays(time, last, format)) as [Phrase, Phrase];
  const head = say`From set-out to harvest the crop takes ${other} in ${names[1]} and ${own} in ${names[0]}`;
  if (last === undefined) return [...head, ...plainly('.')];
  return sayLinked`${head}: see ${link(last.label)}.`;
}

/** A crop that the last change has made shorter or longer. */
export function timeChangedPhrase(
  plan: string,
  before: Decimal,
  now: Decimal,
  last: Cell | undefined,
  format: Format,
): LinkedPhrase {
  const [by, from, to] = [now.minus(before).abs(), before, now].map((time) => cropDays(time, last, format)) as [
    Phrase,
    Phrase,
    Phrase,
  ];
  const head = now.lt(before)
    ? say`The last change made the crop of ${plan} ${by} shorter from set-out to harvest (${from} before, ${to} now)`
    : say`The last change made the crop of ${plan} ${by} longer from set-out to harvest (${from} before, ${to} now)`;
  if (last === undefined) return [...head, ...plainly('.')];
  return sayLinked`${head}: should ${link(last.label)} make up for it?`;
}

/** A guess that stands at nothing although it may be more. */
export function freePhrase(cell: Cell, of: { cell: Cell; value: Decimal } | undefined, format: Format): LinkedPhrase {
  const high = spoken(cell.range?.high ?? decimal(0), cell.unit, format);
  const name = link(cell.label);
  if (of === undefined) return sayLinked`${name} stands at 0, and may be as much as ${high}.`;
  const [other, value] = [plainly(of.cell.label), spoken(of.value, of.cell.unit, format)];
  return sayLinked`${name} stands at 0, and may be as much as ${high}, while ${other} is ${value}.`;
}

/** A check that does not hold unless an entry is 0. */
export function unlessPhrase(check: Cell, cell: Cell): LinkedPhrase {
  return sayLinked`${plainly(check.label)} See ${link(cell.label)}.`;
}

export const were = {
  asLong: (time: Decimal, last: Cell | undefined, format: Format): Phrase =>
    say`With ${cropDays(time, last, format)} in both`,
  asBefore: (time: Decimal, last: Cell | undefined, format: Format): Phrase =>
    say`Were it ${cropDays(time, last, format)} again`,
  atHigh: ({ range, unit }: Cell, format: Format): Phrase =>
    say`At ${plainly(spoken(range?.high ?? decimal(0), unit, format))}`,
  atNothing: ({ label }: Cell): Phrase => say`Were ${plainly(label)} 0`,
};
