import type { Cell } from '../../model/cell';

/** The word for a truth. The label of a check is a warning, so its value reads as one; any other is yes or no. */
export function truthWord(cell: Cell, holds: boolean): string {
  if (cell.role === 'check') return holds ? 'not so' : 'warning';
  return holds ? 'yes' : 'no';
}
