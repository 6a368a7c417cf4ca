import type { Cell } from '../../../model/cell';
import type { Values } from '../../../model/values';
import { wholeWeeks } from '../../../trade/week';
import { say, type Phrase } from '../../text/phrase';
import type { Format } from '../../text/numberFormat';
import { shown } from '../../text/quantities';

/** That the model counts other weeks a year than the calendar runs, by its first entry in weeks a year. */
export function weeksWorkedSentence(cells: readonly Cell[], values: Values | undefined, format: Format): Phrase {
  const worked = cells.find(({ unitText }) => unitText.replaceAll(' ', '') === 'week/year');
  const weeks = worked && values?.numbers[worked.id];
  if (worked === undefined || weeks?.isFinite() !== true || weeks.eq(wholeWeeks)) return [];
  return say`These are ${wholeWeeks} weeks on end; the model’s results count ${shown(weeks, 1, format)} a year, by “${worked.label}”.`;
}
