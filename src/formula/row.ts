import type { Checked } from './checked';

/** Arithmetic signs that stand in a row without brackets. */
export type Sign = 'add' | 'subtract' | 'multiply' | 'divide';

/** A step along a row: a sign with what stands to its right, or a conversion. */
export type RowStep =
  Extract<Checked, { op: 'convert' }> | { readonly op: Sign; readonly left: Checked; readonly right: Checked };

export function isStep(node: Checked): node is RowStep {
  switch (node.op) {
    case 'convert':
    case 'add':
    case 'subtract':
    case 'multiply':
    case 'divide':
      return true;
    default:
      return false;
  }
}

/**
 * A part of a formula as what it begins with and the steps that follow, in the order in which they compute. A long sum
 * is thousands of parts deep on its left: taken as a row, it needs no call within a call for each.
 */
export function rowOf(node: Checked): { readonly start: Checked; readonly steps: readonly RowStep[] } {
  const steps: RowStep[] = [];
  let start = node;
  while (isStep(start)) {
    steps.push(start);
    start = start.op === 'convert' ? start.of : start.left;
  }
  return { start, steps: steps.reverse() };
}
