import { translated } from '../../language/translated';

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

/** A unit's text as it is printed: `EUR/m^2/year` as EUR/m²/year, `board*week` as board·week. */
export function printedUnit(text: string): string {
  return text
    .replace(/\s+/g, '')
    .replace(/\^(-?\d)/g, (_power, digits: string) => digits.replace(/./g, (digit) => raised[digit] ?? digit))
    .replaceAll('*', '\u00b7')
    .replace(/[A-Za-z_]+/g, unitWord);
}
