/** Runs something once, a while after it was first asked for. */
export interface Delay {
  readonly ask: () => void;
  readonly cancel: () => void;
  /** Runs at once what was asked for, if anything was. */
  readonly hurry: () => void;
}

/** @param ms milliseconds that what was asked for waits at most, however often it is asked for meanwhile */
export function createDelay(ms: number, run: () => void): Delay {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const cancel = (): void => {
    clearTimeout(timer);
    timer = undefined;
  };
  const now = (): void => {
    cancel();
    run();
  };
  return {
    ask: () => {
      timer ??= setTimeout(now, ms);
    },
    cancel,
    hurry: () => {
      if (timer !== undefined) now();
    },
  };
}
