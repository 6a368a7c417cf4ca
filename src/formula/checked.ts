import type { Ratio } from '../core/ratio';
import type { FormulaFunction } from './function';

/** Operations of two numbers. */
export type NumberOperation = 'add' | 'subtract' | 'multiply' | 'divide' | 'power';
/** Operations of two numbers that give true or false. */
export type Comparison = 'less' | 'atMost' | 'greater' | 'atLeast' | 'equal' | 'unequal';

/**
 * A checked formula: names are cells, units fit, and every conversion between units stands where it is made. Numbers
 * and truths (1 and 0) never mix. This is what every evaluator takes.
 */
export type Checked =
  | { readonly op: 'number'; readonly text: string }
  | { readonly op: 'cell'; readonly cell: number }
  | { readonly op: 'convert'; readonly of: Checked; readonly by: Ratio }
  | { readonly op: 'negate' | 'not'; readonly of: Checked }
  | { readonly op: NumberOperation | Comparison | 'and' | 'or'; readonly left: Checked; readonly right: Checked }
  | { readonly op: 'choose'; readonly test: Checked; readonly yes: Checked; readonly no: Checked }
  | { readonly op: 'call'; readonly fn: FormulaFunction; readonly args: readonly Checked[] };
