import { createEffect, createSignal, type Accessor } from 'solid-js';
import { calendar, type Calendar } from '../../trade/calendar';
import { roundingLoss, type RoundingLoss } from '../../trade/roundingLoss';
import { suggestions, type Suggestion } from '../../trade/suggestions';
import { createBackground, type Stage } from '../finding/background';
import type { Asked } from './asked';

/** What takes a few milliseconds, and the schedule that it was worked out for. */
export interface Later {
  readonly asked: Asked;
  readonly year: Calendar;
  /** Undefined for a schedule with a fault. */
  readonly loss: RoundingLoss | undefined;
  readonly suggested: readonly Suggestion[];
}

export function workOut(asked: Asked, start: number): Later {
  const { schedule, season, parts } = asked;
  return {
    asked,
    year: calendar({ schedule, season, start, parts }),
    loss: roundingLoss(schedule),
    suggested: suggestions(schedule),
  };
}

/** The calendar and what rounding costs, in idle time after a change; until then what was there stays in sight. */
export function createLater(ask: Accessor<Asked | undefined>, start: Accessor<number>): Accessor<Later | undefined> {
  const [later, setLater] = createSignal<Later>();
  const background = createBackground();
  createEffect(() => {
    const [asked, from] = [ask(), start()];
    background.stop();
    if (asked === undefined) return setLater(undefined);
    let found: Later | undefined;
    const stage: Stage = {
      step: () => {
        found = workOut(asked, from);
        return true;
      },
      show: () => setLater(found),
    };
    background.start([stage]);
  });
  return later;
}
