import type { Cell } from '../../model/cell';
import type { Model } from '../../model/model';
import { leaves } from '../numbers/ancestry';
import { marked } from '../theCase/caseOf';

/** An input on which a case rests. */
export interface Movable {
  readonly cell: Cell;
  /** Indices of the plans of which each has a value of its own; one where they share it. */
  readonly plans: readonly number[];
}

/** Inputs under one heading of the model. */
export interface MovableGroup {
  readonly heading: string;
  readonly inputs: readonly Movable[];
}

function valuesOf({ plans }: Model, cell: Cell, compared: readonly number[]): readonly number[] {
  const isOwn = compared.some((plan) => plans[plan]?.contents[cell.id]?.own === true);
  return isOwn ? compared : compared.slice(0, 1);
}

/**
 * The inputs from which the lines of a case are made, in the order and under the headings of the file.
 * @param compared indices of the plan that is given up and of the one that is taken
 */
export function movableInputs(model: Model, compared: readonly number[]): MovableGroup[] {
  const plans = compared.flatMap((plan) => model.plans[plan] ?? []);
  const ids = new Set(marked(model).flatMap(({ id }) => leaves(model, plans, id).map((cell) => cell.id)));
  const groups = new Map<string, Movable[]>();
  for (const cell of model.cells) {
    if (!ids.has(cell.id)) continue;
    const inputs = groups.get(cell.group) ?? [];
    inputs.push({ cell, plans: valuesOf(model, cell, compared) });
    groups.set(cell.group, inputs);
  }
  return [...groups].map(([heading, inputs]) => ({ heading, inputs }));
}
