import { translated } from '../../language/translated';
import { wording } from '../../language/wording';
import table from '../../../shared/units.json' with { type: 'json' };

/** What is meant by a word in a catalogue that is a unit's. */
export const unitContext = 'unit';

const raised: Record<string, string> = {
  '-': '⁻',
  1: '¹',
  2: '²',
  3: '³',
  4: '⁴',
  5: '⁵',
  6: '⁶',
  7: '⁷',
  8: '⁸',
  9: '⁹',
};

/** A name in a unit in the language of the page, where that has a word for it: `day` as día, `plant` as planta. */
export function unitWord(name: string): string {
  return translated(name, unitContext).replaceAll('_', ' ');
}

/** How a unit of the table is said; where its record does not tell, it is written as the sign that its name is. */
interface Said {
  /** After several: `days`. */
  readonly many?: string | undefined;
  /** Under the stroke: `a day`. */
  readonly under?: string | undefined;
}

export const unitsSaid = new Map(table.units.map(({ name, said = {} }): [string, Said] => [name, said]));

/** Whether a name is a noun that is counted, and no abbreviation. */
export function isWord(name: string): boolean {
  return /^[a-z]{3,}(?:_[a-z]+)*$/.test(name) && !unitsSaid.has(name);
}

/** `a year`, `per plant`; undefined for what is better written as a sign. */
export function saidUnder(name: string): string | undefined {
  const under = unitsSaid.get(name)?.under;
  if (under !== undefined) return unitWord(under);
  return isWord(name) ? wording`per ${unitWord(name)}` : undefined;
}

/** A unit's text as it is printed: `EUR/m^2/year` as EUR/m²/year, `board*week` as board·week, `1/year` as a year. */
export function printedUnit(text: string): string {
  const whole = text.replace(/\s+/g, '');
  return (whole.startsWith('1/') ? saidUnder(whole.slice(2)) : undefined) ?? signs(whole);
}

function signs(text: string): string {
  return text
    .replace(/\^(-?\d)/g, (_power, digits: string) => digits.replace(/./g, (digit) => raised[digit] ?? digit))
    .replaceAll('*', '\u00b7')
    .replace(/[A-Za-z_]+/g, unitWord);
}
