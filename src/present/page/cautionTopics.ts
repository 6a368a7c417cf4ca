import { isCurrency } from '../../core/unit';
import type { Cell } from '../../model/cell';
import type { CautionTopic } from './cautions';

function hasMoney({ unit }: Cell): boolean {
  return [...(unit?.dimension.keys() ?? [])].some(isCurrency);
}

function isWage(cell: Cell): boolean {
  return hasMoney(cell) && cell.unit?.dimension.get('s') === -1;
}

/** The topics of cautions for a model: money, and wages where an hour has a price. */
export function cautionTopics(cells: readonly Cell[]): CautionTopic[] {
  return [...(cells.some(isWage) ? ['wages' as const] : []), ...(cells.some(hasMoney) ? ['money' as const] : [])];
}
