import type { Cell } from '../../../model/cell';
import type { Values } from '../../../model/values';
import type { Format } from '../../text/numberFormat';

/** `Wash a board, 75 s/board`; the label alone where there are no values. */
export function labelWithNumber({ id, label, unit }: Cell, values: Values | undefined, format: Format): string {
  const number = values?.numbers[id];
  return number === undefined ? label : `${label}, ${format.withUnit(number, unit)}`;
}
