import { plural } from '../../language/plural';
import { isWord, printedUnit, unitsSaid, unitWord } from './printedUnit';

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
