import { numberToText, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Format } from '../text/numberFormat';
import { printedUnit } from '../text/printedUnit';
import { entryTexts } from './entryTexts';

/** For screen readers, the plan of a number; blank where it counts in every plan. */
export function planRemark(plan: string, isOwn: boolean, varies: boolean): string {
  if (isOwn) return entryTexts.ownOf(plan);
  return varies ? entryTexts.inPlan(plan) : '';
}

/** The accessible name of an input's field: `Wage, EUR/h, in plan Nursery`. */
export function fieldName({ label, unitText }: Pick<Cell, 'label' | 'unitText'>, remark: string): string {
  return [label, printedUnit(unitText), remark].filter(Boolean).join(', ');
}

/** A value on its range for screen readers: `14.5 EUR/h, outside its range`. */
export function spokenMark(value: Decimal, unit: string, isOutside: boolean, format: Format): string {
  const text = `${format.written(numberToText(value))} ${unit}`.trim();
  return isOutside ? entryTexts.outside(text) : text;
}
