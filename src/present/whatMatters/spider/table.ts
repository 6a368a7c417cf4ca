import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import type { SpiderLine, SpiderPlace } from '../../../study/spider';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import { columnDecimals } from '../../text/columnDecimals';
import { endText } from '../../text/rangeEnds';
import { numberWithUnit, type Format } from '../../text/numberFormat';
import { inPerCent } from '../../text/inPerCent';
import type { TornadoSubject } from '../tornado/sentences';
import { commonTexts } from '../../text/commonTexts';
import { printedUnit } from '../../text/printedUnit';
import { spiderTexts } from './texts';

/** One place of a line as cells of a table. */
export interface SpiderRow {
  readonly cell: Cell;
  readonly name: string;
  readonly change: DataCell;
  readonly input: DataCell;
  readonly result: DataCell;
}

/** Changes in per cent this close are the same place. */
const near = decimal('1e-20');

/** The places that the table shows: both ends, half-way to them, today, and the two from which the bend is computed. */
function toldPlaces({ places, bend }: SpiderLine): SpiderPlace[] {
  const [low, high] = [places[0], places.at(-1)];
  if (low === undefined || high === undefined) return [];
  const middles =
    bend === undefined
      ? [low.change.plus(high.change).dividedBy(2)]
      : [low.change.dividedBy(2), high.change.dividedBy(2), decimal(0), bend.change.negated(), bend.change];
  const wanted = [low.change, high.change, ...middles];
  return places.filter(({ change }) => wanted.some((one) => one.minus(change).abs().lte(near)));
}

function changeText(change: Decimal, format: Format): string {
  return change.isZero() ? commonTexts.today : inPerCent(format.signed(change, undefined, 1));
}

function rowsAt(
  lines: readonly SpiderLine[],
  { base, result, nameOf }: TornadoSubject,
  format: Format,
  places: (line: SpiderLine) => readonly SpiderPlace[],
): SpiderRow[] {
  const results = lines.flatMap((line) => line.places.map((place) => place.result));
  const decimals = columnDecimals([base, ...results], result.unit);
  return lines.flatMap((line) => {
    const { cell } = line.lever;
    const unit = printedUnit(cell.unitText);
    return places(line).map(({ change, input, result: at }) => ({
      cell,
      name: nameOf(cell),
      change: figure(changeText(change, format), change),
      input: figure(numberWithUnit(endText(input, cell, format), cell.unitText), input, unit),
      result: figure(at.isNaN() ? commonTexts.cannotCompute : format.fixed(at, decimals), at),
    }));
  });
}

/** The lines as rows of a table. */
export function spiderRows(lines: readonly SpiderLine[], subject: TornadoSubject, format: Format): SpiderRow[] {
  return rowsAt(lines, subject, format, toldPlaces);
}

/** Every place of the lines, for whoever takes the picture's numbers out. */
export function everySpiderRow(lines: readonly SpiderLine[], subject: TornadoSubject, format: Format): SpiderRow[] {
  return rowsAt(lines, subject, format, ({ places }) => places);
}

/** @param unit of the results, as it is printed */
export function spiderTable(rows: readonly SpiderRow[], caption: string, unit: string): DataTable {
  const units = ['', '%', '', unit];
  return {
    caption,
    columns: spiderTexts.heads.map((name, k) => ({ name, unit: units[k] ?? '' })),
    rows: rows.map(({ name, change, input, result }) => [words(name), change, input, result]),
  };
}
