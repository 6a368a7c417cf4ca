import { wording, wordingOf } from '../../../language/wording';
import type { Switch } from './switchingInput';
import { switchingTexts } from './texts';
import { decimal, type Decimal } from '../../../core/number';
import { isQuantity } from '../../../model/cell';
import { wordsOf } from '../../../model/choices';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import { spoken } from '../../text/spokenNumber';
import { endText } from '../../text/rangeEnds';
import { numberWithUnit, type Format } from '../../text/numberFormat';
import { printedUnit } from '../../text/printedUnit';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import { inPerCent } from '../../text/inPerCent';
import { isShare } from '../../text/share';

/** The switching value of one input as cells of a table. */
export interface SwitchLine {
  readonly cell: Switch['cell'];
  readonly name: string;
  readonly today: DataCell;
  readonly flips: DataCell;
  readonly change: DataCell;
}

/** A change in per cent with a sign: one decimal below 10, none above. */
export function changeText(change: Decimal, format: Format): string {
  const decimals = change.abs().lt(10) ? 1 : 0;
  const text = format.fixed(change, decimals);
  // A change too small for the decimals is still a change.
  if (!change.isZero() && !/[1-9]/.test(text)) return wording`less than ${inPerCent(format.fixed(decimal('0.1'), 1))}`;
  return `${change.gt(0) ? '+' : ''}${inPerCent(text)}`;
}

type NameOf = (cell: Switch['cell']) => string;

/** `just above 16 days` where the answer changes just behind a value; the value alone where it changes at it. */
export function placeText({ base, value, kind }: Switch, text: string): string {
  if (kind !== 'behind' || value === undefined) return text;
  return value.gte(base) ? wording`just above\u00a0${text}` : wording`just below\u00a0${text}`;
}

/** Lines in the order of the search: the thinnest margin first. */
export function switchLines(found: readonly Switch[], nameOf: NameOf, format: Format): SwitchLine[] {
  return found.map((one) => {
    const { cell, base, value, change, count } = one;
    const shown = (number: Decimal): string => withUnitAfter(endText(number, cell, format), cell);
    const withOthers = (place: string): string => (count > 1 ? wording`${place} (${count - 1} more)` : place);
    const unit = printedUnit(cell.unitText);
    const flips = (at: Decimal): DataCell => ({
      ...figure(withOthers(placeText(one, shown(at))), at, unit),
      alone: shown(at),
    });
    return {
      cell,
      name: nameOf(cell),
      today: figure(shown(base), base, unit),
      flips: value === undefined ? words(wordingOf('an entry, the answer')`cannot flip it`) : flips(value),
      change: change === undefined ? words('') : figure(changeText(change, format), change),
    };
  });
}

export function switchTable(lines: readonly SwitchLine[]): DataTable {
  return {
    caption: switchingTexts.caption,
    columns: switchingTexts.heads.map((name, k, { length }) => ({ name, unit: k === length - 1 ? '%' : '' })),
    rows: lines.map(({ name, today, flips, change }) => [words(name), today, flips, change]),
  };
}

/** `16 days`; the words of a choice alone. */
function withUnitAfter(text: string, cell: Switch['cell']): string {
  return isQuantity(cell) ? numberWithUnit(text, cell.unitText) : text;
}

/** How far the first of the switching values is from today. */
function thinnest(first: Switch & { readonly value: Decimal }, name: string, format: Format): Phrase {
  const { cell, value, change, kind } = first;
  const words = wordsOf(cell, value);
  if (words !== undefined) return say`${name} flips the answer by itself: with ${words}.`;
  const at = placeText(first, spoken(value, cell.unit, format));
  const where = kind === 'behind' ? say`${at}` : say`at ${at}`;
  if (change === undefined) return say`${name} has the thinnest margin: ${where}, the answer flips.`;
  const far = changeText(change, format);
  return isShare(cell)
    ? say`${name} has the thinnest margin: ${where}, a change of ${far} of today’s number, the answer flips.`
    : say`${name} has the thinnest margin: ${where}, ${far} from today, the answer flips.`;
}

/** Which guess has the thinnest margin before the answer changes. */
export function switchSentence(found: readonly Switch[], nameOf: NameOf, format: Format): Phrase {
  const [first] = found;
  const flipping = found.filter(({ value }) => value !== undefined).length;
  if (first === undefined) return say`No entry can flip the answer: the plan has no input.`;
  if (first.value === undefined)
    return say`No entry by itself can flip the answer, however wrong it is within the range looked at.`;
  const cannot = found.length - flipping;
  return sentences(
    thinnest({ ...first, value: first.value }, nameOf(first.cell), format),
    cannot === 0 ? [] : plainly(wording`${cannot} of ${found.length} entries cannot flip it.`),
  );
}
