import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Format } from '../format';

/** Digits of an end of a range that are shown as they were typed. */
const typedDigits = 7;

/** An end of a range, as it was typed unless that is long. */
export function endText(value: Decimal, { unit }: Cell, format: Format): string {
  return value.sd() <= typedDigits ? format.full(value) : format.value(value, unit);
}
