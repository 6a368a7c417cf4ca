import type { Cell } from '../../model/cell';
import { cropParts, type CropParts } from '../../model/cropParts';
import type { Values } from '../../model/values';
import { readSchedule, type Schedule } from '../../trade/schedule';
import { readSeason, type Season } from '../../trade/season';
import type { CropNames } from './stageNames';
import { namesOf } from './names';

/** The crop schedule of one plan, with what screens need of it. */
export interface PlanSchedule {
  readonly cells: readonly Cell[];
  readonly parts: CropParts;
  readonly schedule: Schedule;
  readonly season: Season;
  readonly names: CropNames;
  /** All its numbers as one text; schedules with equal texts are equal. */
  readonly numbers: string;
}

/** Undefined where the model has no crop schedule. */
export function planScheduleOf(cells: readonly Cell[], values: Values): PlanSchedule | undefined {
  const schedule = readSchedule(cells, values);
  if (schedule === undefined) return undefined;
  const season = readSeason(cells, values);
  const parts = cropParts(cells);
  const names = namesOf(parts, schedule.stages.length);
  return { cells, parts, schedule, season, names, numbers: JSON.stringify([schedule, season]) };
}

/** Whether two schedules are the same, so that an edit of a price, for example, computes no calendar. */
export function samePlanSchedule(a: PlanSchedule | undefined, b: PlanSchedule | undefined): boolean {
  return a?.numbers === b?.numbers && a?.cells === b?.cells;
}
