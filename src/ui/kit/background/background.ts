import { onCleanup } from 'solid-js';
import { pause } from '../../app/jobs/pause';
import { underWay } from '../../app/layout/paper';

/** Milliseconds of work at a time, so that the page stays responsive. */
const slice = 6;

/** Work in steps. */
export interface WorkStage {
  /** Does one step; returns whether it was the last. */
  step(): boolean;
  /** Shows the results so far; called after each slice of steps. */
  show(done: boolean): void;
}

/** A stage that steps through a sequence of values; `show` gets the latest. */
export function workStage<T>(values: Iterator<T, void>, show: (latest: T, done: boolean) => void): WorkStage {
  let latest: { readonly value: T } | undefined;
  return {
    step: () => {
      const next = values.next();
      if (next.done !== true) latest = next;
      return next.done === true;
    },
    show: (done) => {
      if (latest !== undefined) show(latest.value, done);
    },
  };
}

/** Runs steps until the slice of time is over and shows the results; returns whether all steps are done. */
export function runSlice(stage: WorkStage, now: () => number = () => performance.now()): boolean {
  const end = now() + slice;
  let done = false;
  do done = stage.step();
  while (!done && now() < end);
  stage.show(done);
  return done;
}

/** Work between frames. A new start replaces the work before it, and all ends with the component. */
export interface Background {
  /** Runs stages one after another, slice by slice, after a wait in milliseconds, by default `pause`. */
  start(stages: readonly WorkStage[], wait?: number): void;
  stop(): void;
}

export function createBackground(): Background {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const sign = {};
  const stop = (): void => {
    clearTimeout(timer);
    underWay.delete(sign);
  };
  const later = ([stage, ...rest]: readonly WorkStage[], wait: number): void => {
    if (stage === undefined) return void underWay.delete(sign);
    underWay.add(sign);
    timer = setTimeout(() => {
      later(runSlice(stage) ? rest : [stage, ...rest], 0);
    }, wait);
  };
  onCleanup(stop);
  return {
    start: (stages, wait = pause) => {
      stop();
      later(stages, wait);
    },
    stop,
  };
}
