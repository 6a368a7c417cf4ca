import type { Decimal } from '../../core/number';
import { cellNamed, type Model } from '../../model/model';
import type { Values } from '../../model/values';
import type { FarmAnswers, FigureKey } from '../../trade/farm/answers';
import { askedFigures } from '../../trade/farm/askedFigures';
import { keptOf } from '../../trade/farm/rangeRule';
import { shown } from '../text/quantities';
import type { Format } from '../text/numberFormat';
import { daysPerWeek } from '../../trade/week';

const decimals = 3;

function inTimeUnit(value: Decimal, from: string, to: FarmAnswers['timeUnit']): Decimal {
  if (from === to) return value;
  return to === 'week' ? value.div(daysPerWeek) : value.times(daysPerWeek);
}

/** What stands in the model for each figure that is asked for, as its field shows it while it is blank. */
export function greyFigures(
  { question, timeUnit }: FarmAnswers,
  model: Model,
  values: readonly Values[],
  format: Format,
): ReadonlyMap<FigureKey, string> {
  const texts = askedFigures[question].flatMap(({ key, entry, rule }): [FigureKey, string][] => {
    // Staff hours hold today's work as well.
    if (key === 'freeHours') return [[key, '0']];
    const cell = cellNamed(model, entry);
    // What only one plan has stands in the last one.
    const value = cell === undefined ? undefined : values.at(-1)?.numbers[cell.id];
    if (cell === undefined || value?.isFinite() !== true) return [];
    const isTime = key === 'timeToday' || key === 'nurseryTime' || key === 'finishingTime';
    const asked = rule === 'loss' ? keptOf(value) : isTime ? inTimeUnit(value, cell.unitText, timeUnit) : value;
    return [[key, shown(asked, decimals, format)]];
  });
  return new Map(texts);
}
