import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';

/** The input that moves. */
export interface Moved {
  readonly cell: Cell;
  readonly today: Decimal;
  /** Its own range; undefined where the number is a decision and has none. */
  readonly range: { readonly low: Decimal; readonly high: Decimal } | undefined;
}
