import { halfAwayFromZero, numberToText, type Decimal } from './number';

/** A number rounded for showing to a number of decimals, half away from zero; the text keeps trailing zeros. */
export function toDecimals(value: Decimal, decimals: number): string {
  const text = value.toFixed(decimals, halfAwayFromZero);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/** A number rounded for showing to a number of significant digits, half away from zero, in JSON's number grammar. */
export function toSignificant(value: Decimal, digits: number): string {
  return numberToText(value.toSignificantDigits(digits, halfAwayFromZero));
}
