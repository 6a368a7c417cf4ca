import type { Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';

/** Where one input flips the answer. */
export interface Switch {
  readonly cell: Cell;
  readonly base: Decimal;
  /** Undefined where nothing in the range looked at flips it. */
  readonly value: Decimal | undefined;
  /** Whether it flips not at that value but right behind it, as seen from today. */
  readonly isBehind: boolean;
  /** In per cent of today's number; undefined where that is 0. */
  readonly change: Decimal | undefined;
  /** How many values flip it. */
  readonly count: number;
}
