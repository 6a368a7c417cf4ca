import { decimal, type Decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import { decimalsFor, needsPower, roundedText } from './digits';
import { unitAfter } from './saidUnits';

/** The decimal and thousands marks of a locale. */
interface Marks {
  readonly decimal: string;
  readonly group: string;
}

/** The minus sign of typography, as wide as a digit. */
const minus = '\u2212';
/** A space that does not break a line. */
export const space = '\u00a0';

/** A number's text followed by its unit as it is printed: `16 days`, `14.20 EUR/m²`; the number alone without one. */
export function numberWithUnit(number: string, unitText: string): string {
  return [number, unitAfter(number, unitText)].filter(Boolean).join(space);
}

/** Writes numbers for a locale. Rounding is half away from zero and only for showing. */
export interface Format {
  readonly locale: string;
  readonly marks: Marks;
  /** A number's text in a model file, with all its digits. */
  written(text: string): string;
  /** A calculated number with the digits that its unit calls for (see `decimalsFor`). */
  value(value: Decimal, unit: Unit | undefined): string;
  /** The same followed by the unit, for sentences: `14.20 EUR/h`. */
  withUnit(value: Decimal, unit: Unit | undefined): string;
  /** With a fixed number of decimals. */
  fixed(value: Decimal, decimals: number): string;
  /** With a sign in front, + too; no sign at 0. Decimals as `value` has them unless given. */
  signed(value: Decimal, unit: Unit | undefined, decimals?: number): string;
  /**
   * The difference b − a with a sign. It has as many decimals as a and b are shown with, more only where it would read
   * 0.
   * @param decimals with which a and b are shown, where not those of `value`
   */
  difference(a: Decimal, b: Decimal, unit: Unit | undefined, decimals?: number): string;
  /** All digits. */
  full(value: Decimal): string;
  /** A float64 on an axis whose ticks stand `step` apart. */
  readonly tick: (value: number, step: number) => string;
}

function marksOf(numbers: Intl.NumberFormat): Marks {
  const parts = numbers.formatToParts(1234567.5);
  const find = (type: string): string => parts.find((part) => part.type === type)?.value ?? '';
  return { decimal: find('decimal') || '.', group: find('group') };
}

/** How numbers are shown in a locale such as `de-AT`; digits are always 0 to 9. */
export function createFormat(locale: string): Format {
  const numbers = new Intl.NumberFormat(locale, { numberingSystem: 'latn' });
  const marks = marksOf(numbers);

  const written = (text: string): string => {
    const [, sign = '', whole = '', part = '', power = ''] = /^(-?)(\d*)(?:\.(\d*))?(e.*)?$/i.exec(text) ?? [];
    if (whole === '' && part === '') return text;
    // Up to three digits there is nothing to group, in any locale.
    const digits = whole.length <= 3 ? String(Number(whole)) : numbers.format(BigInt(whole));
    return (sign && minus) + digits + (part && marks.decimal + part) + power.replace('-', minus);
  };
  const fixed = (value: Decimal, decimals: number): string => written(roundedText(value, decimals));
  const shown = (value: Decimal, unit: Unit | undefined): string => fixed(value, decimalsFor(value, unit));
  const signed = (value: Decimal, unit: Unit | undefined, decimals = decimalsFor(value, unit)): string => {
    const text = fixed(value, decimals);
    return value.gt(0) && /[1-9]/.test(text) ? `+${text}` : text;
  };

  return {
    locale,
    marks,
    written,
    value: shown,
    withUnit: (value, unit) => numberWithUnit(shown(value, unit), unit?.text ?? ''),
    fixed,
    signed,
    difference: (a, b, unit, decimals = Math.max(decimalsFor(a, unit), decimalsFor(b, unit))) => {
      const difference = b.minus(a);
      const coarse = signed(difference, unit, Math.min(decimals, decimalsFor(difference, unit)));
      return /[1-9]/.test(coarse) || difference.isZero() ? coarse : signed(difference, unit, 1 - difference.e);
    },
    full: (value) => written(needsPower(value) ? value.toString().replace('e+', 'e') : value.toFixed()),
    tick: (value, step) => {
      const decimals = Math.min(12, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
      return fixed(decimal(Number(value.toPrecision(15))), decimals);
    },
  };
}
