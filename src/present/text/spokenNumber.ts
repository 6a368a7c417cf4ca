import type { Decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import { space, type Format } from './numberFormat';
import { printedUnit, saidUnder } from './printedUnit';
import { saidOfSeveral } from './saidUnits';

/**
 * A unit as a sentence says it after a number: `EUR/year` as EUR a year, `s/plant` as s per plant, `day` as days. A
 * unit with more than one stroke, or with a sign after it, is printed as it is.
 */
export function spokenUnit(text: string, one: boolean): string {
  const [top = '', below, ...more] = text.replace(/\s+/g, '').split('/');
  const tail = below === undefined ? '' : saidUnder(below);
  if (tail === undefined || top === '1' || more.length > 0) return printedUnit(text);
  const head = one ? printedUnit(top) : saidOfSeveral(top);
  return [head, tail].filter(Boolean).join(' ').replaceAll(' ', space);
}

/** A number's text with its unit as a sentence says it: `10 days`; the number alone without one. */
export function spokenWithUnit(number: string, unitText: string, one = number === '1'): string {
  return [number, spokenUnit(unitText, one)].filter(Boolean).join(space);
}

/** A number with its unit as a sentence says it: `9,334 EUR a year`, `14.94 s per plant`, `10 days`, `2.5 %`. */
export function spoken(value: Decimal, unit: Unit | undefined, format: Format): string {
  return spokenWithUnit(format.value(value, unit), unit?.text ?? '');
}
