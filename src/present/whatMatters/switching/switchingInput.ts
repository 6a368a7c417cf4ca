import type { Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import type { SwitchPlace } from '../../../study/switching';

/** Where one input changes the answer. */
export interface Switch {
  readonly cell: Cell;
  readonly base: Decimal;
  /** Undefined where no number in the range searched changes the answer. */
  readonly value: Decimal | undefined;
  /**
   * How the answer changes there: as the result comes to the target, by a jump that is done at the value, or by one
   * just behind it, seen from today's number.
   */
  readonly kind: SwitchPlace['kind'];
  /** Change from today's number in per cent of it; undefined where that is 0, and between named choices. */
  readonly change: Decimal | undefined;
  /** How many numbers in the range change the answer. */
  readonly count: number;
}
