import type { Decimal } from '../../../core/number';
import { shown } from '../../text/quantities';
import type { Format } from '../../text/numberFormat';
import type { YearsTerms } from './terms';
import { yearsTexts } from './texts';

/** Between what an outlay may come to, in money; the low end below the high one. */
export interface OutlayRange {
  readonly low: Decimal;
  readonly high: Decimal;
}

/** The range of an outlay that a person gave, or what is wrong with it; undefined while none is given. */
export function outlayRange(
  { low, high }: Pick<YearsTerms, 'low' | 'high'>,
  outlay: Decimal,
  format: Format,
): OutlayRange | { readonly fault: string } | undefined {
  if (low === undefined && high === undefined) return undefined;
  if (low === undefined || high === undefined) return { fault: yearsTexts.halfRange };
  const [from, to, at] = [low, high, outlay].map((amount) => shown(amount, 2, format)) as [string, string, string];
  if (!low.lt(high)) return { fault: yearsTexts.turnedRange(from, to) };
  if (outlay.lt(low) || outlay.gt(high)) return { fault: yearsTexts.outsideRange(at, from, to) };
  return { low, high };
}
