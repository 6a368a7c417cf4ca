import { wording } from '../../language/wording';
import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { wordsOf } from '../../model/choices';
import type { Format } from './numberFormat';
import { plainly, type Phrase } from './phrase';
import { spokenWithUnit } from './spokenNumber';

/** An end of a range with up to this many digits is shown as it was typed. */
const typedDigits = 7;

/** A number of an input: the words of its choice, or the number as it was typed unless that is long. */
export function endText(value: Decimal, cell: Cell, format: Format): string {
  return wordsOf(cell, value) ?? typedText(value, cell, format);
}

function typedText(value: Decimal, { unit }: Cell, format: Format): string {
  return value.sd() <= typedDigits ? format.full(value) : format.value(value, unit);
}

/** `, outside its range of 8 to 12 weeks`; nothing where a number lies inside or the entry has none. */
export function beyondRange(value: Decimal, cell: Cell, format: Format): Phrase {
  if (cell.range === undefined || (value.gte(cell.range.low) && value.lte(cell.range.high))) return [];
  const [low, end] = [endText(cell.range.low, cell, format), endText(cell.range.high, cell, format)];
  const high = spokenWithUnit(end, cell.unitText, false);
  return plainly(wording`, outside its range of ${low} to ${high}`);
}
