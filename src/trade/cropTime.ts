import { parts as sides } from '../core/ratio';
import { sum, type Decimal } from '../core/number';
import type { Cell } from '../model/cell';
import { cropParts } from '../model/cropParts';
import { inputBehind } from '../model/inputBehind';
import type { Model, Plan } from '../model/model';
import type { Values } from '../model/values';
import { isRunning, readSchedule } from './schedule';

/** Days that a crop stands on the water in a plan, and the input that sets the days of its last stage. */
export interface CropTime {
  /** From set-out to harvest, in days. */
  readonly days: Decimal;
  /** Undefined where the last stage's time is computed. */
  readonly last: Cell | undefined;
  /** That input's number, in its own unit. */
  readonly lastNumber: Decimal | undefined;
}

function lastInput({ cells }: Model, plan: Plan, stage: number): Cell | undefined {
  const timed = cropParts(cells).get(`stage ${stage} time`);
  const id = timed === undefined ? undefined : inputBehind(plan, timed.id);
  return id === undefined ? undefined : cells[id];
}

/** How long the crop of a plan takes; undefined for a model without a crop schedule, or with a time that is none. */
export function cropTime(model: Model, plan: Plan, values: Values): CropTime | undefined {
  const stages = readSchedule(model.cells, values)?.stages.filter(isRunning);
  const final = stages?.at(-1);
  if (stages === undefined || final === undefined) return undefined;
  const days = sum(stages.map(({ time }) => time));
  if (!days.isFinite()) return undefined;
  const last = lastInput(model, plan, final.number);
  return { days, last, lastNumber: last && values.numbers[last.id] };
}

/** The number of the last stage's input with which a crop takes so many days; undefined where none above 0 does. */
export function lastNumberFor({ days, last, lastNumber }: CropTime, wanted: Decimal): Decimal | undefined {
  if (last?.unit === undefined || lastNumber === undefined) return undefined;
  const { over, under } = sides(last.unit.scale);
  const number = lastNumber.plus(wanted.minus(days).times(under).div(over));
  return number.gt(0) ? number : undefined;
}
