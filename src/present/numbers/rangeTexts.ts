import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import { isQuantity, type Cell } from '../../model/cell';
import { fittedRange, keptWidth, type KeptWidth, type RangeTexts } from '../../model/change/ranges';
import { hasForeignRange } from './standings';
import { isOutside } from './rangeSteps';
import type { Format } from '../text/numberFormat';
import { endText } from '../text/rangeEnds';

/** What is said of numbers outside their range, which is moved by one press. */
export const rangeTexts = {
  outside: (low: string, high: string) => wording`Outside its range of ${low} to ${high}.`,
  /** Of a range that came with a figure which has become somebody's own. */
  takenOver: (low: string, high: string) => wording`Its range of ${low} to ${high} is still taken over.`,
  keep: wording`Mine too`,
  fit: (low: string, high: string) => wording`Make it ${low} to ${high}`,
  /** Behind that, how wide the range stays. */
  asWide: ({ percent }: KeptWidth) =>
    percent === undefined ? wording`as wide as before` : wording`as wide as before, ±${percent} %`,
  outsideList: (count: number) =>
    count === 1
      ? wording`This number stands outside its range. Charts and draws still go by that range.`
      : wording`These ${count} numbers stand outside their ranges. Charts and draws still go by those ranges.`,
  fitAll: (count: number) => (count === 1 ? wording`Move its range to it` : wording`Move all ranges to their numbers`),
} as const;

/** The sentence below a number whose range does not belong to it, and what one press would make of the range. */
export interface RangeOffer {
  readonly said: string;
  /** Whether the range may be kept as it stands. */
  readonly canStay: boolean;
  /** Blank where the range lies around its number already. */
  readonly fit: string;
  /** Blank where the range becomes narrower. */
  readonly asWide: string;
  /** The ends that the press would give it. */
  readonly ends: RangeTexts;
}

/** Undefined where the number lies in its range and that is no one else's, or where there is none that could follow. */
export function rangeOffer(cell: Cell, value: Decimal, source: string, format: Format): RangeOffer | undefined {
  const { range } = cell;
  if (range === undefined || !isQuantity(cell)) return undefined;
  const isOff = isOutside(range, value);
  if (!isOff && !hasForeignRange(source)) return undefined;
  const ends = fittedRange(cell, value);
  if (ends === undefined) return undefined;
  const width = keptWidth(cell, value, ends);
  const said = (end: Decimal): string => endText(end, cell, format);
  const [low, high] = [said(decimal(ends.low)), said(decimal(ends.high))];
  const [lowNow, highNow] = [said(range.low), said(range.high)];
  return {
    said: isOff ? rangeTexts.outside(lowNow, highNow) : rangeTexts.takenOver(lowNow, highNow),
    canStay: !isOff,
    fit: low === lowNow && high === highNow ? '' : rangeTexts.fit(low, high),
    asWide: width === undefined ? '' : rangeTexts.asWide(width),
    ends,
  };
}
