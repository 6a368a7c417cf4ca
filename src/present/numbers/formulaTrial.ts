import { edit, type Edit, type Edited } from '../../model/edit';
import type { Problem } from '../../core/problem';
import type { Model } from '../../model/model';

/** An edit tried out: what it gives, and what is then wrong with the cell itself. */
export interface Trial {
  readonly edited: Edited;
  /** A fault that leaves the cell without a value; faults upstream of it are none of its own. */
  readonly fault: Problem | undefined;
}

/** A fault of a range's end. Half a range is let pass: the other end may come next, and till then the entry says so. */
function rangeFaultIn(model: Model, { row }: Edit): Problem | undefined {
  const isEnd = (column: string): boolean => column === 'low' || column === 'high';
  return model.faults.find(({ where, code }) => where.row === row && isEnd(where.column) && code !== 'range-half');
}

/** Tries an edit of a cell's formula, of a plan's own one, or of an end of its range. */
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
