import type { Cell } from '../../model/cell';

/** A check's label is a warning, so what it gives is said as one; any other truth is a yes or a no. */
export function truthWord(cell: Cell, holds: boolean): string {
  if (cell.role === 'check') return holds ? 'not so' : 'warning';
  return holds ? 'yes' : 'no';
}
