import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { decimalsFor } from '../../text/digits';
import { endText } from '../../text/rangeEnds';
import { numberWithUnit, type Format } from '../../text/numberFormat';
import { printedUnit } from '../../text/printedUnit';
import type { ShownBar } from './bars';
import { flips, type TornadoSubject } from './sentences';

/** One end of a bar as texts. */
export interface End {
  /** The input's value with its unit, at this end. */
  readonly input: string;
  /** The result at this end; undefined where it cannot be computed. */
  readonly result: string | undefined;
}

/** One bar as texts. */
export interface TornadoRow {
  readonly cell: Cell;
  readonly name: string;
  readonly low: End;
  readonly high: End;
  /** Undefined where an end cannot be computed. */
  readonly swing: string | undefined;
  readonly flips: boolean;
  /** Whether the ends are the 5th and the 95th percentile rather than the ends of the range. */
  readonly percentiles: boolean;
}

/**
 * Decimals for all results of a tornado: as many as a number of the size of the largest needs, but no more than any of
 * the results has.
 */
export function commonDecimals(bars: readonly ShownBar[], { base, result }: TornadoSubject): number {
  const known = [base, ...bars.flatMap(({ atLow, atHigh }) => [atLow, atHigh])].filter((value) => !value.isNaN());
  const powers = known.flatMap((value) => (value.isZero() ? [] : value.e));
  const ofItsSize = decimalsFor(decimal(`1.23456789e${powers.length === 0 ? 0 : Math.max(...powers)}`), result.unit);
  return ofItsSize === 0 ? 0 : Math.min(ofItsSize, Math.max(...known.map((value) => decimalsFor(value, result.unit))));
}

/** The bars as texts, their results with a number of decimals. */
export function rowsOf(
  bars: readonly ShownBar[],
  subject: TornadoSubject,
  decimals: number,
  format: Format,
): TornadoRow[] {
  const shown = (value: Decimal): string | undefined => (value.isNaN() ? undefined : format.fixed(value, decimals));
  return bars.map((bar) => {
    const { cell } = bar.lever;
    const end = (input: Decimal, result: Decimal): End => ({
      input: numberWithUnit(endText(input, cell, format), cell.unitText),
      result: shown(result),
    });
    return {
      cell,
      name: subject.nameOf(cell),
      low: end(bar.low, bar.atLow),
      high: end(bar.high, bar.atHigh),
      swing: shown(bar.swing),
      flips: flips(bar, subject.base),
      percentiles: cell.range?.shape === 'normal' || cell.range?.shape === 'lognormal',
    };
  });
}

function sameEnd(a: End, b: End): boolean {
  return a.input === b.input && a.result === b.result;
}

function sameRow(a: TornadoRow, b: TornadoRow): boolean {
  return (
    a.cell === b.cell &&
    a.name === b.name &&
    a.swing === b.swing &&
    a.flips === b.flips &&
    a.percentiles === b.percentiles &&
    sameEnd(a.low, b.low) &&
    sameEnd(a.high, b.high)
  );
}

/** The rows, with the earlier object in the place of each row that is the same, so that it is not drawn anew. */
export function unchangedRows(rows: readonly TornadoRow[], before: readonly TornadoRow[]): readonly TornadoRow[] {
  return rows.map((row, i) => {
    const old = before[i];
    return old !== undefined && sameRow(row, old) ? old : row;
  });
}

/** The unit of the results and swings as it is printed; blank for plain numbers. */
export function tornadoUnit({ result }: TornadoSubject): string {
  return printedUnit(result.unitText);
}
