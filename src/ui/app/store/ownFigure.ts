import { isNumberText } from '../../../core/number';
import { ownSources, withRangeSource } from '../../../model/change/sources';
import type { Edit } from '../../../model/edit';
import { field, type Sheet } from '../../../model/sheet';

/**
 * An edit by a person: a number or an end of a range that is typed has a source of its own. A range beside a shared
 * number that is typed stays whose it was, and the source says so; a plan's own number has none.
 */
export function ownFigure(change: Edit, { rows }: Sheet, today = new Date()): Edit {
  if (change.source !== undefined || !isNumberText(change.text)) return change;
  const row = rows.find((one) => one.row === change.row);
  const own = ownSources.entered(today);
  const isBeside = row !== undefined && field(row, 'low') !== '' && change.column === 'formula';
  return { ...change, source: isBeside ? withRangeSource(own, field(row, 'source')) : own };
}
