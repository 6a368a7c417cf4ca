import { decimal, numberToText, type Decimal } from '../../core/number';
import { isQuantity, type Cell } from '../cell';
import type { Model } from '../model';
import { isNumber, readNumber } from '../readNumber';
import { field, sourceOf, type Sheet } from '../sheet';
import { indexOfRow, withFields } from './rows';
import { sourceParts } from './sources';

/** Low and high of a range, as texts of the file. */
export interface RangeTexts {
  readonly low: string;
  readonly high: string;
}

/** Rounds an end to two digits of how far it lies from the value: no more than a person would write. */
function written(end: Decimal, value: Decimal): string {
  const reach = end.minus(value).abs();
  if (reach.isZero()) return numberToText(end);
  const step = decimal(10).pow(reach.e - 1);
  return numberToText(end.div(step).round().times(step));
}

/** A share stays one: a range that lay within 0 and 100 % stays there, as long as its number does. */
function bounded(end: Decimal, { unitText, range }: Pick<Cell, 'unitText' | 'range'>, value: Decimal): Decimal {
  const within = [value, range?.low, range?.high].every((one) => one === undefined || (one.gte(0) && one.lte(100)));
  if (unitText !== '%' || !within) return end;
  return end.lt(0) ? decimal(0) : end.gt(100) ? decimal(100) : end;
}

function middleOf({ low, high }: NonNullable<Cell['range']>): Decimal {
  return low.plus(high).div(2);
}

/** Whether a range keeps its width in per cent of its middle where it is moved to a value, and not in its unit. */
function isScaled(range: NonNullable<Cell['range']>, value: Decimal): boolean {
  const middle = middleOf(range);
  return !middle.isZero() && value.div(middle).gt(0);
}

/**
 * The range moved to a value and as wide as before in per cent of its middle. Where the middle or the value is 0 or
 * of another sign, it keeps its width in its unit; but a range that did not reach below 0 does not do so around 0.
 */
export function fittedRange(cell: Pick<Cell, 'unitText' | 'range'>, value: Decimal): RangeTexts | undefined {
  const { range } = cell;
  if (range === undefined) return undefined;
  const middle = middleOf(range);
  const ends = [range.low, range.high].map((end) => {
    const moved = isScaled(range, value) ? value.times(end).div(middle) : value.plus(end.minus(middle));
    return value.isZero() && range.low.gte(0) && moved.lt(0) ? decimal(0) : bounded(moved, cell, value);
  });
  const [low, high] = ends.map((end) => (value.isZero() ? numberToText(end) : written(end, value)));
  return { low: low!, high: high! };
}

/** How far the width of a moved range may be off by the rounding of its ends, as a share of it. */
const offByRounding = 0.1;

/** How wide a range stays that is moved to a value. */
export interface KeptWidth {
  /** Half of it in per cent of the middle, rounded to whole; undefined where it stays as wide in its unit. */
  readonly percent: number | undefined;
}

/** Undefined where a range that is moved to a value becomes narrower, as at the ends of a share. */
export function keptWidth({ range }: Pick<Cell, 'range'>, value: Decimal, ends: RangeTexts): KeptWidth | undefined {
  if (range === undefined) return undefined;
  const [middle, width] = [middleOf(range), range.high.minus(range.low)];
  const scaled = isScaled(range, value);
  const expected = scaled ? width.times(value).div(middle) : width;
  const off = decimal(ends.high).minus(ends.low).minus(expected).abs();
  if (off.gt(expected.abs().times(offByRounding))) return undefined;
  return { percent: scaled ? width.div(2).div(middle.abs()).times(100).round().toNumber() : undefined };
}

/** A range around a value, so many per cent to each side; a share stays within 0 and 100 %. */
export function rangeAround(value: Decimal, percent: number, unitText: string): RangeTexts {
  const reach = value.abs().times(percent).div(100);
  const cell = { unitText, range: undefined };
  const [low, high] = [value.minus(reach), value.plus(reach)].map((end) => bounded(end, cell, value));
  if (value.isZero()) return { low: '0', high: '0' };
  return { low: written(low!, value), high: written(high!, value) };
}

/** The shared number of an entry that stands outside its range; undefined where it stands inside or has none. */
function numberOutside({ sheet }: Pick<Model, 'sheet'>, cell: Cell): Decimal | undefined {
  const row = sheet.rows[indexOfRow(sheet, cell.row)];
  const number = row === undefined ? undefined : readNumber(field(row, 'formula'));
  if (cell.range === undefined || !isQuantity(cell) || number === undefined || !isNumber(number)) return undefined;
  return number.lt(cell.range.low) || number.gt(cell.range.high) ? number : undefined;
}

/** Entries whose number stands outside their range. */
export function outsideRange({ cells, findings, sheet }: Model): Cell[] {
  const rows = new Set(findings.ranges.filter(({ code }) => code === 'range-value').map(({ where }) => where.row));
  return cells.filter((cell) => rows.has(cell.row) && numberOutside({ sheet }, cell) !== undefined);
}

/** The field of a figure's source that calls its range the person's own; none where it says nothing else. */
function ownRangeFields(sheet: Sheet, row: number): Readonly<Record<string, string>> {
  const [own, from] = sourceParts(sourceOf(sheet, row));
  return own && from ? { source: own } : {};
}

/** A sheet in which the range of an entry is its person's own, as it stands or with other ends. */
export function withOwnRange(sheet: Sheet, row: number, ends?: RangeTexts): Sheet {
  return withFields(sheet, row, { ...ends, ...ownRangeFields(sheet, row) });
}

/** A sheet in which the ranges of some entries are moved to their numbers. */
export function withRangesFitted(model: Model, cells: readonly Cell[]): Sheet {
  return cells.reduce((sheet, cell) => {
    const value = numberOutside(model, cell);
    const fitted = value === undefined ? undefined : fittedRange(cell, value);
    return fitted === undefined ? sheet : withOwnRange(sheet, cell.row, fitted);
  }, model.sheet);
}
