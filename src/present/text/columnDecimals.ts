import type { Decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import { decimalsFor } from './digits';

/** Decimals for all numbers of a table: as many as the largest needs; 0 where none can be computed. */
export function columnDecimals(values: readonly Decimal[], unit: Unit | undefined): number {
  const [first, ...rest] = values.filter((value) => value.isFinite()).map((value) => value.abs());
  if (first === undefined) return 0;
  const largest = rest.reduce((most, size) => (size.gt(most) ? size : most), first);
  return decimalsFor(largest, unit);
}
