import type { Decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import { space, type Format } from './numberFormat';
import { plural } from '../../language/plural';
import { isWord, printedUnit, saidUnder, unitsSaid, unitWord } from './printedUnit';

/** `plants`, `days`; what is no word stays as it is. */
function saidOfSeveral(name: string): string {
  const many = unitsSaid.get(name)?.many;
  if (many !== undefined) return unitWord(many);
  return isWord(name) ? plural(unitWord(name)) : printedUnit(name);
}

/** A unit as it is printed behind a number: a lone noun in its plural after several, `15 days`. */
export function unitAfter(number: string, unitText: string): string {
  return number === '1' || /[^a-z_]/.test(unitText) ? printedUnit(unitText) : saidOfSeveral(unitText);
}

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
