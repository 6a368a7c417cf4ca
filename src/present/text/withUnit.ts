import type { Cell } from '../../model/cell';
import { printedUnit } from './printedUnit';

/** The title of an axis, a column or a caption: `Wage, EUR/h`; the name alone where its numbers have no unit. */
export function withUnit({ label, unitText }: Pick<Cell, 'label' | 'unitText'>): string {
  return [label, printedUnit(unitText)].filter(Boolean).join(', ');
}
