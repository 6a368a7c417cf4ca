import type { Model } from '../../model/model';
import type { Switch } from '../howSure/switchSearch';

/** An input and the number at which the answer turns, as far as it lies in its range. */
export interface Hinge extends Switch {
  readonly value: NonNullable<Switch['value']>;
  /** Whether the number lies in the input's range; undefined where it has none. */
  readonly inRange: boolean | undefined;
}

/** Inputs told of at most. */
const most = 5;

/** The plan's own number is a decision and has no range, whatever stands for the other plans. */
function inRange({ plans }: Model, plan: number, { cell, value }: Switch): boolean | undefined {
  const content = plans[plan]?.contents[cell.id];
  if (cell.range === undefined || value === undefined || content?.own === true) return undefined;
  return value.gte(cell.range.low) && value.lte(cell.range.high);
}

/**
 * The inputs whose turning point is nearest to today.
 * @param found thinnest margin first
 */
export function closest(found: readonly Switch[], model: Model, plan: number): Hinge[] {
  const hinges = found.flatMap((each): Hinge[] => {
    const { value } = each;
    return value === undefined ? [] : [{ ...each, value, inRange: inRange(model, plan, each) }];
  });
  return hinges.slice(0, most);
}
