import type { Decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import { space, type Format } from './numberFormat';
import { printedUnit } from './printedUnit';

/** How a sentence says some units after the stroke. */
const under: Readonly<Record<string, string>> = {
  s: 'per second',
  min: 'per minute',
  h: 'an hour',
  day: 'a day',
  week: 'a week',
  month: 'a month',
  year: 'a year',
};
/** Names of units that look like words but are signs. */
const signs: ReadonlySet<string> = new Set(['min', 'gal', 'kWh', 'thousand']);

function isWord(name: string): boolean {
  return /^[a-z]{3,}(?:_[a-z]+)*$/.test(name) && !signs.has(name);
}

/** The plural of a noun: `board` as boards, `bench` as benches. */
export function plural(noun: string): string {
  if (/[^aeiou]y$/.test(noun)) return noun.replace(/y$/, 'ies');
  if (/(?:ea|l)f$/.test(noun)) return noun.replace(/f$/, 'ves');
  return noun + (/(?:s|x|ch|sh)$/.test(noun) ? 'es' : 's');
}

/**
 * A unit after the stroke as a sentence says it, `a year` or `per plant`; undefined for one that is better left a sign.
 */
function saidUnder(name: string): string | undefined {
  return under[name] ?? (isWord(name) ? `per ${name}` : undefined);
}

/**
 * A unit as a sentence says it after a number: `EUR/year` as EUR a year, `s/plant` as s per plant, `day` as days. A
 * unit with more than one stroke, or with a sign after it, is printed as it is.
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
