import { isNumberText } from '../../../core/number';
import { ownSources } from '../../../model/change/sources';
import type { Edit } from '../../../model/edit';

/** An edit by a person: a number or an end of a range that is typed has a source of its own. */
export function ownFigure(change: Edit, today = new Date()): Edit {
  if (change.source !== undefined || !isNumberText(change.text)) return change;
  return { ...change, source: ownSources.entered(today) };
}
