import { createEffect, createSignal, type Accessor } from 'solid-js';
import { calendar, type Calendar } from '../../../trade/calendar';
import { roundingLoss, type RoundingLoss } from '../../../trade/roundingLoss';
import { suggestions, type Suggestion } from '../../../trade/suggestions';
import { createBackground, type WorkStage } from '../../kit/background/background';
import type { PlanSchedule } from '../../../present/beds/planSchedule';

/** Results that take a few milliseconds, and the schedule they belong to. */
export interface YearStudy {
  readonly planSchedule: PlanSchedule;
  readonly year: Calendar;
  /** Undefined for a schedule with a fault. */
  readonly loss: RoundingLoss | undefined;
  readonly suggested: readonly Suggestion[];
}

function yearStudy(planSchedule: PlanSchedule, start: number): YearStudy {
  const { schedule, season, parts } = planSchedule;
  return {
    planSchedule,
    year: calendar({ schedule, season, start, parts }),
    loss: roundingLoss(schedule),
    suggested: suggestions(schedule),
  };
}

/** The calendar and the loss to rounding, computed in idle time after a change; until then the earlier ones stay. */
export function createYearStudy(
  ask: Accessor<PlanSchedule | undefined>,
  start: Accessor<number>,
): Accessor<YearStudy | undefined> {
  const [latest, setLatest] = createSignal<YearStudy>();
  const background = createBackground();
  createEffect(() => {
    const [planSchedule, from] = [ask(), start()];
    background.stop();
    if (planSchedule === undefined) return setLatest(undefined);
    let found: YearStudy | undefined;
    const stage: WorkStage = {
      step: () => {
        found = yearStudy(planSchedule, from);
        return true;
      },
      show: () => setLatest(found),
    };
    background.start([stage]);
  });
  return latest;
}
