import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { fittedRange, widthOf } from '../../model/change/ranges';
import type { Format } from '../text/numberFormat';
import { endText } from '../text/rangeEnds';

/** What is said of numbers outside their range, which is moved by one press. */
export const rangeTexts = {
  outside: (low: string, high: string) => wording`Outside its range of ${low} to ${high}.`,
  fit: (low: string, high: string) => wording`Make it ${low} to ${high}`,
  /** Behind that, how wide the range stays. */
  asWide: (percent: number | undefined) =>
    percent === undefined ? wording`as wide as before` : wording`as wide as before, ±${percent} %`,
  outsideList: (count: number) =>
    count === 1
      ? wording`This number stands outside its range. Charts and draws still go by that range.`
      : wording`These ${count} numbers stand outside their ranges. Charts and draws still go by those ranges.`,
  fitAll: (count: number) => (count === 1 ? wording`Move its range to it` : wording`Move all ranges to their numbers`),
} as const;

/** The sentence below a number outside its range, and what one press would make of the range. */
export interface RangeOffer {
  readonly outside: string;
  readonly fit: string;
  readonly asWide: string;
}

/** Undefined where the number lies in its range or there is none that could follow. */
export function rangeOffer(cell: Cell, value: Decimal, format: Format): RangeOffer | undefined {
  const { range, choices } = cell;
  if (range === undefined || choices.length > 0 || (value.gte(range.low) && value.lte(range.high))) return undefined;
  const fitted = fittedRange(cell, value);
  if (fitted === undefined) return undefined;
  const said = (end: Decimal): string => endText(end, cell, format);
  return {
    outside: rangeTexts.outside(said(range.low), said(range.high)),
    fit: rangeTexts.fit(said(decimal(fitted.low)), said(decimal(fitted.high))),
    asWide: rangeTexts.asWide(widthOf(cell)),
  };
}
