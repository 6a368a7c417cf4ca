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

/** A unit's text as it is printed: `EUR/m^2/year` as EUR/m²/year, `board*week` as board·week. */
export function printedUnit(text: string): string {
  return text
    .replace(/\s+/g, '')
    .replace(/\^(-?\d)/g, (_power, digits: string) => digits.replace(/./g, (digit) => raised[digit] ?? digit))
    .replaceAll('*', '\u00b7')
    .replaceAll('_', ' ');
}
