import type { Decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import { space, type Format } from './numberFormat';
import { printedUnit } from './printedUnit';

/** How a unit under the stroke is said. */
const under: Readonly<Record<string, string>> = {
  s: 'per second',
  min: 'per minute',
  h: 'an hour',
  day: 'a day',
  week: 'a week',
  month: 'a month',
  year: 'a year',
};
/** Names of units that are signs rather than words, though they look like words. */
const signs: ReadonlySet<string> = new Set(['min', 'gal', 'kWh', 'thousand']);

function isWord(name: string): boolean {
  return /^[a-z]{3,}(?:_[a-z]+)*$/.test(name) && !signs.has(name);
}

/** A noun for several: `board` as boards, `bench` as benches. */
export function plural(noun: string): string {
  if (/[^aeiou]y$/.test(noun)) return noun.replace(/y$/, 'ies');
  if (/(?:ea|l)f$/.test(noun)) return noun.replace(/f$/, 'ves');
  return noun + (/(?:s|x|ch|sh)$/.test(noun) ? 'es' : 's');
}

/** `a year`, `per plant`; undefined for what is better written as a sign. */
function saidUnder(name: string): string | undefined {
  return under[name] ?? (isWord(name) ? `per ${name}` : undefined);
}

/**
 * A unit as it is said after a number: `EUR/year` as EUR a year, `s/plant` as s per plant, `day` as days. What has more
 * than one stroke, or a sign below it, is printed as it is.
 */
export function spokenUnit(text: string, one: boolean): string {
  const [top = '', below, ...more] = text.replace(/\s+/g, '').split('/');
  const tail = below === undefined ? '' : saidUnder(below);
  if (tail === undefined || top === '1' || more.length > 0) return printedUnit(text);
  const head = printedUnit(isWord(top) && !one ? plural(top) : top);
  return [head, tail.replaceAll('_', ' ')].filter(Boolean).join(' ').replaceAll(' ', space);
}

/** A number's text with its unit as a sentence says it: `10 days`; the number alone without one. */
export function spokenWithUnit(number: string, unitText: string, one = number === '1'): string {
  return [number, spokenUnit(unitText, one)].filter(Boolean).join(space);
}

/** A number with its unit as a sentence says it: `9,334 EUR a year`, `14.94 s per plant`, `10 days`, `2.5 %`. */
export function spoken(value: Decimal, unit: Unit | undefined, format: Format): string {
  return spokenWithUnit(format.value(value, unit), unit?.text ?? '');
}
