import type { Problem } from '../../../core/problem';
import {
  balancedFlow,
  handSetFlow,
  isRunning,
  wholeBoards,
  type Balanced,
  type HandSet,
  type WholeBoards,
} from '../../../trade/schedule';
import { byWeeks, type ByWeeks } from '../../../trade/byWeeks';
import { scheduleFaults } from '../../../trade/scheduleFaults';
import type { PlanSchedule } from '../planSchedule';

/** What is computed from a schedule at once when it changes. */
export interface ScheduleView {
  readonly planSchedule: PlanSchedule;
  readonly balanced: Balanced;
  readonly whole: WholeBoards;
  /** Undefined where no boards are set by hand. */
  readonly byHand: HandSet | undefined;
  /** Undefined where there are not two stages to share boards between, or its numbers are unknown. */
  readonly byWeeks: ByWeeks | undefined;
  readonly faults: readonly Problem[];
}

function sharing({ schedule }: PlanSchedule): ByWeeks | undefined {
  if (schedule.stages.filter(isRunning).length < 2) return undefined;
  const found = byWeeks(schedule);
  return found?.keepsPace.finishedPerWeek.isNaN() === false ? found : undefined;
}

export function scheduleView(planSchedule: PlanSchedule): ScheduleView {
  const { schedule, parts } = planSchedule;
  return {
    planSchedule,
    balanced: balancedFlow(schedule),
    whole: wholeBoards(schedule),
    byHand: handSetFlow(schedule),
    byWeeks: sharing(planSchedule),
    faults: scheduleFaults(schedule, parts),
  };
}
