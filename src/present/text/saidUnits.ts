import table from '../../../shared/units.json';
import { plural } from '../../language/plural';
import { printedUnit, unitWord } from './printedUnit';

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

/** `plants`, `days`; what is no word stays as it is. */
export function saidOfSeveral(name: string): string {
  const many = unitsSaid.get(name)?.many;
  if (many !== undefined) return unitWord(many);
  return isWord(name) ? plural(unitWord(name)) : printedUnit(name);
}

/** A unit as it is printed behind a number: a lone noun in its plural after several, `15 days`. */
export function unitAfter(number: string, unitText: string): string {
  return number === '1' || /[^a-z_]/.test(unitText) ? printedUnit(unitText) : saidOfSeveral(unitText);
}
