import { onCleanup } from 'solid-js';
import { pause } from '../../app/jobs/pause';

/** Longest that work may hold up the page at a time, in milliseconds. */
const slice = 6;

/** Work in steps. */
export interface WorkStage {
  /** Does one step; whether all are done. */
  step(): boolean;
  /** Shows what there is, after each slice of steps. */
  show(done: boolean): void;
}

/** A stage that looks at each value of a sequence; `show` gets the latest. */
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

/** Runs steps until the slice is over, and shows what came of it; whether all are done. */
export function runSlice(stage: WorkStage, now: () => number = () => performance.now()): boolean {
  const end = now() + slice;
  let done = false;
  do done = stage.step();
  while (!done && now() < end);
  stage.show(done);
  return done;
}

/** Work between frames, of which the newest counts: it ends with the component that asks for it. */
export interface Background {
  /** Runs stages one after the other, slice by slice, after a wait in milliseconds: a short pause unless told. */
  start(stages: readonly WorkStage[], wait?: number): void;
  stop(): void;
}

export function createBackground(): Background {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = (): void => clearTimeout(timer);
  const later = ([stage, ...rest]: readonly WorkStage[], wait: number): void => {
    if (stage === undefined) return;
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
