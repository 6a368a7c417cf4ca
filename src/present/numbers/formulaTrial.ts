import { edit, type Edit, type Edited } from '../../model/edit';
import type { Problem } from '../../core/problem';
import type { Model } from '../../model/model';

/** An edit that was tried: the edited model, and the fault of the edited cell, if any. */
export interface Trial {
  readonly edited: Edited;
  /** A fault that leaves the cell itself without a value; faults of cells upstream do not count. */
  readonly fault: Problem | undefined;
}

/**
 * A fault of an end of a range. A range with one end is let through: the other end may be typed next, and until then
 * the entry shows the fault.
 */
function rangeFaultIn(model: Model, { row }: Edit): Problem | undefined {
  const isEnd = (column: string): boolean => column === 'low' || column === 'high';
  return model.faults.find(({ where, code }) => where.row === row && isEnd(where.column) && code !== 'range-half');
}

/** Tries an edit of a cell's shared formula, of a plan's own one, or of an end of its range. */
export function tryEdit(model: Model, cell: number, change: Edit): Trial {
  const edited = edit(model, change);
  const faulty = edited.model.plans.flatMap(({ contents }) => {
    const content = contents[cell];
    return content?.kind === 'void' && content.cause === cell ? [content.fault] : [];
  });
  const isRange = change.column === 'low' || change.column === 'high';
  const fault = isRange ? rangeFaultIn(edited.model, change) : faulty[0];
  return { edited, fault };
}
