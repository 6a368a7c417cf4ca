import { commonTexts } from '../../text/commonTexts';
import { space, type Format } from '../../text/numberFormat';
import { outlayUnit, type OutlayEntry, type YearsBudget } from './terms';

/** How much more of an entry the plan that is taken has, as it stands beside its name. */
export function moreText({ more }: OutlayEntry, made: YearsBudget, format: Format): string {
  if (!more.isFinite()) return commonTexts.noValue;
  return `${format.signed(more, outlayUnit(made))}${space}${made.currency}`;
}
