import { plural } from '../../language/plural';
import type { Format } from '../text/numberFormat';

const plain = /^-?\d+(?:\.\d+)?(?:e-?\d+)?$/;

/** A text without what may follow a number: its unit, or the sign for per cent. */
function withoutUnit(text: string, unit: string): string {
  const bare = text.trim();
  const end = [unit, unit && plural(unit), '%'].find((each) => each !== '' && bare.endsWith(each));
  return end === undefined ? bare : bare.slice(0, -end.length).trim();
}

/**
 * The number that a text shows, as any program reads it: a point for decimals, no thousands marks, a hyphen for minus,
 * no plus, no unit. `−1.234,5 EUR` in a German text is `-1234.5`. Undefined where the text is more than a number.
 * @param unit that may follow, as it is printed, or in its plural
 */
export function plainNumber(text: string, { marks }: Pick<Format, 'marks'>, unit = ''): string | undefined {
  const ungrouped = withoutUnit(text, unit)
    .split(marks.group || '\0')
    .join('');
  const read = ungrouped.replace(marks.decimal, '.').replaceAll('−', '-').replace(/^\+/, '');
  return plain.test(read) ? read : undefined;
}
