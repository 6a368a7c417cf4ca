import type { Cell } from '../../model/cell';
import type { ShownValue } from '../numbers/shownValue';
import { valueText } from '../numbers/valueText';
import { numberWithUnit, type Format } from '../text/numberFormat';
import { letterOf } from '../text/planLetter';
import { printedUnit } from '../text/printedUnit';
import { togetherTexts } from './texts';

/** A value as it is written, and its unit as it is printed; words that stand for a value have no unit. */
export interface BoxValue {
  readonly value: string;
  readonly unit: string;
}

/** What an entry's box says of it in one plan: its value with its unit, or in words why it has none. */
export function valueInBox(shown: ShownValue, cell: Cell, format: Format): BoxValue {
  const { content, error } = shown;
  if (error === undefined) {
    const unit = shown.number.isNaN() ? '' : printedUnit(cell.unitText);
    return { value: valueText(shown, cell, false, format), unit };
  }
  if (content?.kind !== 'void' || content.cause !== cell.id) return { value: togetherTexts.noValue, unit: '' };
  return { value: content.fault.code === 'cycle' ? togetherTexts.inCircle : togetherTexts.faulty, unit: '' };
}

/** The same in one text. */
export function valueOfEntry(shown: ShownValue, cell: Cell, format: Format): string {
  const { value, unit } = valueInBox(shown, cell, format);
  return unit === '' ? value : numberWithUnit(value, cell.unitText);
}

/**
 * What a box is called where it cannot be seen: `Margin, A 12 EUR/year, B 14 EUR/year, Money`.
 * @param values one for each plan that it shows, with its letter
 */
export function boxName(label: string, values: readonly string[], group: string, isMiddle: boolean): string {
  const lettered = values.map((value, i) => `${letterOf(i, values.length)} ${value}`.trim());
  return [label, ...lettered, group, isMiddle ? togetherTexts.inMiddle : ''].filter(Boolean).join(', ');
}
