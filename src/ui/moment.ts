import { finish, type Steps } from '../core/steps';
import type { TableFile } from '../files/tableFile';
import type { Edited } from '../model/edit';
import type { Model } from '../model/model';
import { evaluateInSteps, evaluatePlan, evaluateTouched, touched, type Values } from '../model/values';

/** Where a model came from. One object for each opening, so that two openings of one file differ. */
export interface Origin {
  /** The file's name, with its ending. */
  readonly name: string;
  /** Its key among the shipped models; blank for a person's own file. */
  readonly shipped: string;
  /** When it was opened, in milliseconds since 1970. */
  readonly opened: number;
  /** The file as it was read. */
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** The same understood. */
  readonly file: TableFile;
}

/** A model with its values at one moment; what undo goes back to. */
export interface Moment {
  readonly model: Model;
  readonly values: readonly Values[];
  readonly origin: Origin;
}

/** A model with all its values. */
export function* momentInSteps(model: Model, origin: Origin): Steps<Moment> {
  const values: Values[] = [];
  for (const plan of model.plans) values.push(yield* evaluateInSteps(plan));
  return { model, values, origin };
}

/** The same at once. */
export function momentOf(model: Model, origin: Origin): Moment {
  return finish(momentInSteps(model, origin));
}

/** The moment after an edit: only what the edit touches is computed again. */
export function momentAfter({ model, values, origin }: Moment, { model: next, changed }: Edited): Moment {
  if (changed === undefined) return momentOf(next, origin);
  const moved = next.plans.map((plan, p) => {
    const old = values[p];
    if (old === undefined) return evaluatePlan(plan);
    return plan === model.plans[p] ? old : evaluateTouched(plan, old, touched(plan, changed));
  });
  return { model: next, values: moved, origin };
}
