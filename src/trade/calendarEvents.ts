import type { SownBatch, Stay } from './batches';

export type Task = 'harvest' | 'wash' | 'move' | 'sow';

/** The order of the tasks at one instant: boards are emptied before they are filled. */
export const tasks: readonly Task[] = ['harvest', 'wash', 'move', 'sow'];

/** Something to be done with one batch. */
export interface CalendarEvent {
  readonly task: Task;
  /** Days from the start of the calendar's first day. */
  readonly at: number;
  /** The day of the calendar, from 0. */
  readonly day: number;
  /** The batch's number. */
  readonly batch: number;
  /** Index of the stage that plants leave; undefined for a sowing. */
  readonly from: number | undefined;
  /** Index of the stage that plants enter; undefined where they enter none. */
  readonly to: number | undefined;
  /** Plants that enter the step, rounded up; 0 for washing. */
  readonly plants: number;
  /** Boards filled by sowing and moving, emptied by harvest, washed. */
  readonly boards: number;
}

function filling(batch: SownBatch, stay: Stay, before: Stay | undefined): CalendarEvent {
  return {
    task: before === undefined ? 'sow' : 'move',
    at: stay.from,
    day: Math.floor(stay.from),
    batch: batch.number,
    from: before?.stage,
    to: stay.stage,
    plants: stay.plants,
    boards: stay.boards,
  };
}

function emptying(batch: SownBatch, stay: Stay, task: 'harvest' | 'wash', plants: number): CalendarEvent {
  const [at, day] = [stay.to, Math.floor(stay.to)];
  return { task, at, day, batch: batch.number, from: stay.stage, to: undefined, plants, boards: stay.boards };
}

function eventsOf(batch: SownBatch): CalendarEvent[] {
  const { stays, harvested } = batch;
  const last = stays.at(-1);
  const found = stays.flatMap((stay, i) => [filling(batch, stay, stays[i - 1]), emptying(batch, stay, 'wash', 0)]);
  if (harvested !== undefined && last) found.push(emptying(batch, last, 'harvest', batch.kept));
  return found;
}

/**
 * All that is to be done before the calendar ends, in order of time, then of the tasks. Boards are washed when they are
 * emptied. Harvested plants are rounded up, like those that enter a stage.
 */
export function eventsIn(batches: readonly SownBatch[], days: number): CalendarEvent[] {
  const found = batches.flatMap(eventsOf);
  const order = (event: CalendarEvent): number => tasks.indexOf(event.task);
  return found.filter(({ at }) => at < days).sort((a, b) => a.at - b.at || order(a) - order(b) || a.batch - b.batch);
}
