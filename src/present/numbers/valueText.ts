import { isQuantity, type Cell } from '../../model/cell';
import type { CellError } from '../../model/values';
import { wordsOf } from '../../model/choices';
import type { Format } from '../text/numberFormat';
import { truthWord, yesOrNo } from '../text/truthWord';
import { entryTexts } from './entryTexts';
import { isHiddenError, type ShownValue } from './shownValue';

/** What stands where a result has no number. */
export function withoutValue(error: CellError | undefined): string {
  return isHiddenError(error) ? entryTexts.hidden : entryTexts.noValue;
}

/** A value without its unit: a number, the words of a choice, yes or no, or a sign that there is none. */
export function valueText({ number, error, content }: ShownValue, cell: Cell, full: boolean, format: Format): string {
  // A part of the page may still show a plan that the model has no longer: it knows neither number nor error.
  if (error !== undefined || number.isNaN()) return withoutValue(error);
  if (content?.kind === 'calculated' && content.gives === 'truth') {
    const holds = !number.isZero();
    // Behind the formula of a check the word answers that, and not the check's label.
    return full ? yesOrNo(holds) : truthWord(cell, holds);
  }
  const words = wordsOf(cell, number);
  if (words !== undefined) return words;
  return full || content?.kind === 'input' ? format.full(number) : format.value(number, cell.unit);
}

/** How the second of two values differs from the first; blank for truths, choices, and where one has no value. */
export function differenceText(a: ShownValue, b: ShownValue, cell: Cell, format: Format): string {
  const isTruth = a.content?.kind === 'calculated' && a.content.gives === 'truth';
  if (isTruth || a.number.isNaN() || b.number.isNaN()) return '';
  if (a.number.eq(b.number)) return entryTexts.same;
  return isQuantity(cell) ? format.difference(a.number, b.number, cell.unit) : '';
}
