import { isNumberText } from '../../core/number';
import type { Cell } from '../../model/cell';
import { wordsOf } from '../../model/choices';
import type { Model } from '../../model/model';
import { isNumber, readNumber } from '../../model/readNumber';
import { field } from '../../model/sheet';
import { numberWithUnit, type Format } from '../text/numberFormat';
import { plansTexts } from './texts';

/** What fills an entry in one plan, and what the plans share. */
export interface OwnNumber {
  readonly cell: Cell;
  /** The plan's own column. */
  readonly column: string;
  /** What stands in it; blank where the plan uses what is shared. */
  readonly own: string;
  /** What is shared; blank: nothing. */
  readonly shared: string;
}

/** Undefined for a plan without a column of its own. */
export function ownNumberIn(model: Model, plan: number, cell: Cell): OwnNumber | undefined {
  const column = model.plans[plan]?.column;
  const row = model.sheet.rows.find((one) => one.row === cell.row);
  if (column === undefined || row === undefined) return undefined;
  return { cell, column, own: field(row, column), shared: field(row, 'formula') };
}

/** The number that stands in a plan, as its field shows it; blank where a formula fills it. */
export function standingNumber({ own, shared }: OwnNumber): string {
  const text = own === '' ? shared : own;
  return isNumberText(text) ? text : '';
}

/** What the plans share, for reading; blank where they share nothing. */
export function sharedText({ cell, shared }: OwnNumber, format: Format): string {
  if (shared === '') return '';
  const number = isNumberText(shared) ? readNumber(shared) : undefined;
  if (number === undefined || !isNumber(number)) return plansTexts.sharedFormula;
  return wordsOf(cell, number) ?? numberWithUnit(format.written(shared), cell.unitText);
}

/** What takes a plan's own number away again; blank where it has none, or nothing else would fill the entry. */
export function shareAgainText({ own, shared }: OwnNumber): string {
  if (own === '' || shared === '') return '';
  return isNumberText(shared) ? plansTexts.useSharedNumber : plansTexts.useSharedFormula;
}

/** Whose the number in the field is. */
export function whoseNumber({ own }: OwnNumber, plan: string): string {
  if (own === '') return plansTexts.usesShared(plan);
  return isNumberText(own) ? plansTexts.hasOwn(plan) : plansTexts.hasOwnFormula(plan);
}
