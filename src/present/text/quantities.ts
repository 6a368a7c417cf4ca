import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import type { Noun } from './noun';
import { space, type Format } from './numberFormat';
import { inPerCent } from './inPerCent';

/** Shown where there is no number. */
export const none = '–';

const hundredths = 100;

/** A number with at most this many decimals and no trailing zeros; `none` for NaN. */
export function shown(value: Decimal, decimals: number, format: Format): string {
  if (!value.isFinite()) return none;
  const scale = 10 ** decimals;
  const rounded = value.times(scale).round().dividedBy(scale);
  return format.fixed(rounded, Math.min(decimals, rounded.decimalPlaces()));
}

/** A number with exactly this many decimals, for a column; `none` for NaN. */
export function alignedNumber(value: Decimal | number, decimals: number, format: Format): string {
  const number = typeof value === 'number' ? decimal(value) : value;
  return number.isFinite() ? format.fixed(number, decimals) : none;
}

/** A whole number, rounded. */
export function whole(value: Decimal | number, format: Format): string {
  return shown(typeof value === 'number' ? decimal(value) : value, 0, format);
}

/** `1 plant`, `4,634 plants`. */
export function counted(value: Decimal | number, noun: Noun, format: Format): string {
  const number = whole(value, format);
  return `${number}${space}${number === '1' ? noun.one : noun.many}`;
}

/** `2.5 days`. */
export function days(value: Decimal, format: Format): string {
  const number = shown(value, 2, format);
  return number === '1' ? wording`${number}\u00a0day` : wording`${number}\u00a0days`;
}

export function hours(value: number, format: Format): string {
  const number = shown(decimal(value), 1, format);
  return number === '1' ? wording`${number}\u00a0hour` : wording`${number}\u00a0hours`;
}

/** A share as `5.6 %`. */
export function percent(share: Decimal, format: Format): string {
  const number = shown(share.times(hundredths), 1, format);
  return number === none ? none : inPerCent(number);
}

/** A gain with its sign, as `+51.5 %`. */
export function gain(share: Decimal, format: Format): string {
  const text = percent(share, format);
  return share.gt(0) && text !== none ? `+${text}` : text;
}
