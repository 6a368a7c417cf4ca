import { finish, type Steps } from '../../../core/steps';
import type { TableFile } from '../../../files/tableFile';
import { buildModel } from '../../../model/buildModel';
import type { Edited } from '../../../model/edit';
import type { Model } from '../../../model/model';
import type { Sheet } from '../../../model/sheet';
import { evaluateInSteps, evaluatePlan, evaluateAffected, affected, type Values } from '../../../model/values';

/** Where a model came from. Each opening makes a new object, so that two openings of one file differ. */
export interface Origin {
  /** The file's name, with its ending. */
  readonly name: string;
  /** Its key among the shipped models; blank for a person's own file. */
  readonly shipped: string;
  /** When it was opened, in milliseconds since 1970. */
  readonly opened: number;
  /** The file as it was read. */
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** The file as it was parsed. */
  readonly file: TableFile;
}

/** A model with its values; undo returns to a snapshot. */
export interface Snapshot {
  readonly model: Model;
  readonly values: readonly Values[];
  readonly origin: Origin;
}

/** Computes all values of a model, in steps. */
export function* snapshotInSteps(model: Model, origin: Origin): Steps<Snapshot> {
  const values: Values[] = [];
  for (const plan of model.plans) values.push(yield* evaluateInSteps(plan));
  return { model, values, origin };
}

/** The same at once. */
export function snapshotOf(model: Model, origin: Origin): Snapshot {
  return finish(snapshotInSteps(model, origin));
}

/** The same of a sheet, read as a model was. */
export function snapshotOfSheet(sheet: Sheet, origin: Origin, { reading }: Pick<Model, 'reading'>): Snapshot {
  return snapshotOf(buildModel(sheet, reading), origin);
}

/** The snapshot after an edit; only values that the edit affects are computed again. */
export function snapshotAfter({ model, values, origin }: Snapshot, { model: next, changed }: Edited): Snapshot {
  if (changed === undefined) return snapshotOf(next, origin);
  const moved = next.plans.map((plan, p) => {
    const old = values[p];
    if (old === undefined) return evaluatePlan(plan);
    return plan === model.plans[p] ? old : evaluateAffected(plan, old, affected(plan, changed));
  });
  return { model: next, values: moved, origin };
}
