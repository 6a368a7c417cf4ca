import type { Decimal } from '../core/number';
import type { Problem } from '../core/problem';
import type { Checked } from '../formula/checked';

/**
 * What fills a cell in one plan. `own` is true where it comes from the plan's own column and not from the shared one.
 */
export type Content =
  | { readonly kind: 'input'; readonly own: boolean; readonly text: string; readonly number: Decimal }
  | {
      readonly kind: 'calculated';
      readonly own: boolean;
      readonly text: string;
      readonly gives: 'number' | 'truth';
      readonly node: Checked;
      /** The cells that the formula names, each once. */
      readonly reads: readonly number[];
    }
  | {
      readonly kind: 'void';
      readonly own: boolean;
      readonly text: string;
      readonly fault: Problem;
      /** The cell at fault: itself, or one upstream whose fault leaves this one unchecked. */
      readonly cause: number;
      readonly reads: readonly number[];
    };
