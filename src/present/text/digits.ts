import { halfAwayFromZero, type Decimal } from '../../core/number';
import { isCurrency, minorDigits, type Unit } from '../../core/unit';

/** Numbers with an exponent of `widest` or more, or below `narrowest`, are shown with a power of ten. */
const widest = 15;
const narrowest = -9;

/** Significant digits of a calculated number that is not money. */
const usualDigits = 4;
/** Digits beyond this one may be the rounding of a division and are not counted as a number's own. */
const meant = 15;
const moneyDigits = 3;
/** From this amount up totals of money are shown without the minor unit. */
const largeTotal = 1000;

function currencyOf(unit: Unit | undefined): string | undefined {
  return [...(unit?.dimension ?? [])].find(([kind, power]) => isCurrency(kind) && power === 1)?.[0];
}

/** Whether a unit is a total of money, or money a year, and not money per something. */
function isTotal(unit: Unit | undefined): boolean {
  return [...(unit?.dimension.keys() ?? [])].every((kind) => isCurrency(kind) || kind === 'year');
}

/** The decimals with which a number other than 0 has this many significant digits. */
function forSignificant(value: Decimal, digits: number): number {
  return Math.max(0, digits - 1 - value.e);
}

/**
 * Decimals with which a calculated number is shown. Totals of money: to the minor unit (ISO 4217), from 1,000 up to the
 * whole unit. Money per something: the minor unit, and at least three significant digits. All else: four significant
 * digits, or fewer where the number itself has fewer.
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
