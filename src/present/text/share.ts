import type { Cell } from '../../model/cell';

/** Whether an entry is itself in per cent, so that a change of it in per cent must say of what. */
export function isShare({ unitText }: Pick<Cell, 'unitText'>): boolean {
  return /^\s*%/.test(unitText);
}
