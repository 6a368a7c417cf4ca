import { wording } from '../../language/wording';
import type { Cell } from '../../model/cell';

export function yesOrNo(holds: boolean): string {
  return holds ? wording`yes` : wording`no`;
}

/** The word for a truth. The label of a check is a warning, so its value reads as one; any other is yes or no. */
export function truthWord(cell: Cell, holds: boolean): string {
  if (cell.role === 'check') return holds ? wording`not so` : wording`warning`;
  return yesOrNo(holds);
}
