import { decimal, type Decimal } from '../../../core/number';
import { exportedNumber, type TableEntry } from '../../../files/exportTable';
import type { Cell } from '../../../model/cell';
import type { SpiderLine, SpiderPlace } from '../../../study/spider';
import { columnDecimals } from '../../text/columnDecimals';
import { endText } from '../../text/rangeEnds';
import { numberWithUnit, type Format } from '../../text/numberFormat';
import { inPerCent } from '../../text/inPerCent';
import type { TornadoSubject } from '../tornado/sentences';
import { commonTexts } from '../../text/commonTexts';

/** One place of a line as texts of a table. */
export interface SpiderRow {
  readonly cell: Cell;
  readonly name: string;
  readonly change: string;
  readonly input: string;
  /** Undefined where it cannot be computed. */
  readonly result: string | undefined;
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

/** The lines as rows of a table. */
export function spiderRows(
  lines: readonly SpiderLine[],
  { base, result, nameOf }: TornadoSubject,
  format: Format,
): SpiderRow[] {
  const results = lines.flatMap(({ places }) => places.map((place) => place.result));
  const decimals = columnDecimals([base, ...results], result.unit);
  return lines.flatMap((line) =>
    toldPlaces(line).map((place) => ({
      cell: line.lever.cell,
      name: nameOf(line.lever.cell),
      change: changeText(place.change, format),
      input: numberWithUnit(endText(place.input, line.lever.cell, format), line.lever.cell.unitText),
      result: place.result.isNaN() ? undefined : format.fixed(place.result, decimals),
    })),
  );
}

/** Every place of the lines for other programs, with all digits; blank where it cannot be computed. */
export function spiderEntries(
  lines: readonly SpiderLine[],
  { nameOf }: TornadoSubject,
  result: string,
): TableEntry[][] {
  const rows = lines.flatMap(({ lever: { cell }, places }) =>
    places.map((place): TableEntry[] => [
      nameOf(cell),
      exportedNumber(place.change),
      exportedNumber(place.input),
      cell.unitText,
      exportedNumber(place.result),
    ]),
  );
  return [['entry', 'change from today, %', 'number', 'unit', result], ...rows];
}
