import type { Cell } from '../../model/cell';
import { cropParts, type CropParts } from '../../model/cropParts';
import type { Values } from '../../model/values';
import { readSchedule, type Schedule } from '../../trade/schedule';
import { readSeason, type Season } from '../../trade/season';
import type { CropNames } from './stageNames';
import { namesOf } from './names';

/** The crop schedule of one plan, as it is looked at. */
export interface PlanSchedule {
  readonly cells: readonly Cell[];
  readonly parts: CropParts;
  readonly schedule: Schedule;
  readonly season: Season;
  readonly names: CropNames;
  /** All its numbers in one text: two schedules with the same text are the same. */
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

/** Whether nothing moved that the beds depend on, so that an edit of a price computes no calendar. */
export function samePlanSchedule(a: PlanSchedule | undefined, b: PlanSchedule | undefined): boolean {
  return a?.numbers === b?.numbers && a?.cells === b?.cells;
}
