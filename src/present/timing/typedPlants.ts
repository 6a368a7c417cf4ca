import type { Format } from '../text/numberFormat';
import { typedCount } from '../text/typedNumber';
import { watchTexts } from './watchTexts';

/** Reads the plants of a batch as typed: a whole number above 0, or what is wrong with the text. */
export function typedPlants(typed: string, format: Format): { readonly text: string } | { readonly fault: string } {
  const read = typedCount(typed, format);
  if (!('text' in read)) return { fault: typed.trim() === '' ? watchTexts.countPlants : read.message };
  return /^\d+$/.test(read.text) && Number(read.text) > 0 ? read : { fault: watchTexts.noCount(typed) };
}
