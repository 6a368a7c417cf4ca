import { halfAwayFromZero, type Decimal } from '../../core/number';
import { isCurrency, minorDigits, type Unit } from '../../core/unit';

/** Numbers from here up, and nonzero ones below the other, are shown with a power of ten. */
const widest = 15;
const narrowest = -9;

/** Significant digits of a calculated number that is not money. */
const usualDigits = 4;
/** Significant digits beyond which a number's decimals may be the rounding of a division. */
const meant = 15;
const moneyDigits = 3;
/** Totals of money from here up are shown without the minor unit. */
const largeTotal = 1000;

function currencyOf(unit: Unit | undefined): string | undefined {
  return [...(unit?.dimension ?? [])].find(([kind, power]) => isCurrency(kind) && power === 1)?.[0];
}

/** Whether a unit is money as such or money a year, and not money for each of something. */
function isTotal(unit: Unit | undefined): boolean {
  return [...(unit?.dimension.keys() ?? [])].every((kind) => isCurrency(kind) || kind === 'year');
}

/** Decimals that give a number other than 0 so many significant digits. */
function forSignificant(value: Decimal, digits: number): number {
  return Math.max(0, digits - 1 - value.e);
}

/**
 * Decimals that a calculated number is shown with. Totals of money: to the minor unit (ISO 4217), from 1,000 up to the
 * whole unit. Money for each of something: the minor unit and at least three significant digits. All else: four
 * significant digits, fewer where the number has no more but the rounding of its last digits.
 */
export function decimalsFor(value: Decimal, unit: Unit | undefined): number {
  if (value.isZero()) return 0;
  const currency = currencyOf(unit);
  if (currency === undefined) {
    return Math.min(forSignificant(value, usualDigits), value.toSignificantDigits(meant).decimalPlaces());
  }
  const minor = minorDigits(currency) ?? 2;
  if (isTotal(unit)) return value.abs().gte(largeTotal) ? 0 : minor;
  return Math.max(minor, forSignificant(value, moneyDigits));
}

/** Whether a number is too large or too small for plain digits. */
export function needsPower(value: Decimal): boolean {
  return !value.isZero() && (value.e >= widest || value.e < narrowest);
}

/** A number rounded half away from zero, as text with a point for decimals. */
export function roundedText(value: Decimal, decimals: number): string {
  if (needsPower(value)) return value.toExponential(usualDigits - 1, halfAwayFromZero).replace('+', '');
  const text = value.toFixed(decimals, halfAwayFromZero);
  return /^-[0.]*$/.test(text) ? text.slice(1) : text;
}
