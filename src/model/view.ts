import type { Decimal } from '../core/number';
import { noUnit, type Unit } from '../core/unit';
import type { Cell } from './cell';
import type { Content } from './content';
import type { Model, Plan } from './model';

/** A result in one plan, or its difference between two plans, `plan` less `against`. */
export interface View {
  readonly model: Model;
  /** The cell looked at. */
  readonly result: number;
  readonly plan: Plan;
  readonly against: Plan | undefined;
}

/** An input, with the plans of a view in which a change of it is seen. */
export interface Lever {
  readonly cell: Cell;
  readonly inPlan: boolean;
  readonly inAgainst: boolean;
  /** Its number today, in the place that a change would replace. */
  readonly base: Decimal;
  /** Its range; undefined where a change would replace a plan's own number, which has none. */
  readonly range: Cell['range'];
}

function sharedInput(plan: Plan | undefined, id: number): (Content & { kind: 'input' }) | undefined {
  const content = plan?.contents[id];
  return content?.kind === 'input' && !content.own ? content : undefined;
}

/**
 * An input as a lever: a change replaces the number that the view's plan uses. Undefined for a cell that is not an
 * input there.
 */
export function lever({ model, plan, against }: View, id: number): Lever | undefined {
  const cell = model.cells[id];
  const content = plan.contents[id];
  if (cell === undefined || content?.kind !== 'input') return undefined;
  const inAgainst = !content.own && sharedInput(against, id) !== undefined;
  return { cell, inPlan: true, inAgainst, base: content.number, range: content.own ? undefined : cell.range };
}

/** The inputs with a range that at least one plan of a view takes from the shared formula, in file order. */
export function uncertain({ model, plan, against }: View): Lever[] {
  return model.cells.flatMap((cell) => {
    const seen = [sharedInput(plan, cell.id), sharedInput(against, cell.id)] as const;
    const base = (seen[0] ?? seen[1])?.number;
    if (cell.range === undefined || base === undefined) return [];
    return [{ cell, inPlan: seen[0] !== undefined, inAgainst: seen[1] !== undefined, base, range: cell.range }];
  });
}

/** The unit of a cell, none where it is faulty. */
export function unitOf(cell: Cell | undefined): Unit {
  return cell?.unit ?? noUnit;
}
