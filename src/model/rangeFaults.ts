import { wording } from '../language/wording';
import { problem, type Problem } from '../core/problem';
import type { Cell } from './cell';
import { understand } from './formulaReader';
import type { Plan } from './model';

/**
 * What is wrong between a cell's range and its shared number, which is the only one that the range bounds. A faulty
 * formula is reported elsewhere.
 */
export function rangeFaultsOf({ range, row, name }: Cell, shared: string): Problem[] {
  if (range === undefined) return [];
  const understood = shared === '' ? undefined : understand(shared);
  if (understood?.kind === 'fault') return [];
  if (understood === undefined) {
    const where = { row, column: 'low', cell: name, text: range.low.toString() };
    const fix = wording`Give the column formula a number, or take the range out.`;
    return [problem('range-alone', wording`range without a shared number: ${name}. ${fix}`, where)];
  }
  if (understood.kind !== 'input') {
    const where = { row, column: 'low', cell: name, text: range.low.toString() };
    const fix = wording`Give ranges to the inputs that it is made from.`;
    return [problem('range-calculated', wording`range on a calculated entry: ${name}. ${fix}`, where)];
  }
  const { number } = understood;
  if (number.gte(range.low) && number.lte(range.high)) return [];
  const [low, high] = [range.low.toString(), range.high.toString()];
  const where = { row, column: 'formula', cell: name, text: shared };
  return [
    problem(
      'range-value',
      wording`value outside its range: ${shared}. Widen ${low} to ${high}, or change the value.`,
      where,
    ),
  ];
}

/** Where a plan's own number replaces an input that has a range. */
export function replacedRanges(cell: Cell, plans: readonly Plan[]): Problem[] {
  return plans.flatMap(({ name, column, contents }) => {
    const content = contents[cell.id];
    if (content?.kind !== 'input' || !content.own || cell.range === undefined) return [];
    const where = { row: cell.row, column: column ?? '', cell: cell.name, text: content.text };
    const message = wording`range not used in plan ${name}: ${cell.name}. Its own number counts as certain there.`;
    return [problem('range-replaced', message, where)];
  });
}
