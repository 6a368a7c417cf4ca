import { wording } from '../../language/wording';
import type { Format } from '../text/numberFormat';
import { typedCount, typedNumber } from '../text/typedNumber';
import { columnSaid, type Column } from './columns';
import { atStart } from './sentences';

/** What a text typed into a field of a batch means, as files write it, or in which two ways it could be read. */
type TypedField = { readonly text: string } | { readonly doubt: string };

/**
 * Reads what is typed into a field of a batch. What is no number stays as it is typed: the batch says what is wrong.
 * @param standing the text over which it is typed, as files write it
 */
export function typedField(
  typed: string,
  { name, kind, isWhole }: Column,
  standing: string,
  format: Format,
): TypedField {
  if (kind === 'text') return { text: typed };
  const read = isWhole === true ? typedCount(typed, format) : typedNumber(typed, format, standing);
  if ('text' in read) return read;
  if (read.code !== 'number-two-ways') return { text: typed };
  const sentence = wording`in ${columnSaid(name)}, ${read.message}`;
  return { doubt: atStart(sentence) };
}
