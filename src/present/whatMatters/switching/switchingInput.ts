import type { Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';

/** Where one input changes the answer. */
export interface Switch {
  readonly cell: Cell;
  readonly base: Decimal;
  /** Undefined where no number in the range searched changes the answer. */
  readonly value: Decimal | undefined;
  /** Whether the answer changes just behind the value, seen from today's number, and not at it. */
  readonly isBehind: boolean;
  /** Change from today's number in per cent of it; undefined where that is 0. */
  readonly change: Decimal | undefined;
  /** How many numbers in the range change the answer. */
  readonly count: number;
}
