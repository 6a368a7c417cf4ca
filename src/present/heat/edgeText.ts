import { decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import { decimalsFor } from '../text/digits';
import type { Format } from '../text/numberFormat';
import { startOf, type HeatBands } from './bands';

/** A float64 rounded to the digits that its steps leave right. */
function tidied(value: number): ReturnType<typeof decimal> {
  return decimal(Number(value.toPrecision(12)));
}

/**
 * An edge of a band as the key writes it, with as many decimals as the outermost edge needs but no more than the edge
 * itself.
 */
export function edgeText(bands: HeatBands, edge: number, unit: Unit | undefined, format: Format): string {
  const [low, high] = [startOf(bands, bands.first), startOf(bands, bands.last + 1)];
  const decimals = decimalsFor(tidied(Math.max(Math.abs(low), Math.abs(high))), unit);
  const number = tidied(edge);
  return format.fixed(number, Math.min(number.decimalPlaces(), decimals));
}
