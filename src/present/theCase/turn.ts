import { wordsOf } from '../../model/choices';
import type { Format } from '../text/numberFormat';
import { spoken } from '../text/spokenNumber';
import type { TurningInput } from './closest';

/**
 * How an input comes to where it changes the answer: it rises above a number or falls below it, comes to one at which
 * the answer jumps, or becomes another of its choices.
 */
export function turnOf({ cell, base, value, kind }: TurningInput): 'rises' | 'falls' | 'reaches' | 'becomes' {
  if (wordsOf(cell, value) !== undefined) return 'becomes';
  if (kind === 'jumped') return 'reaches';
  return value.gte(base) ? 'rises' : 'falls';
}

/** The number at which an input changes the answer with its unit, or the words of that choice. */
export function turnText({ cell, value }: TurningInput, format: Format): string {
  return wordsOf(cell, value) ?? spoken(value, cell.unit, format);
}
