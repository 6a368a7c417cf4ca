/** Milliseconds of work that is drawn, after which the page gets a turn: a third of a frame, the rest draws it. */
const drawn = 5;

/**
 * Lets the browser draw and answer before the work goes on. A timer, where nothing better is to be had, takes some 4 ms
 * more each time.
 */
export function nextTurn(): Promise<void> {
  const { scheduler } = globalThis as { scheduler?: Partial<Scheduler> };
  return scheduler?.yield?.() ?? new Promise((go) => setTimeout(go));
}

/** Milliseconds after which work goes on without a frame: a page in the background has none. */
const frameless = 50;

/** Lets the browser draw what stands on the page before the work goes on. */
export const nextFrame = (): Promise<void> =>
  new Promise((go) => {
    requestAnimationFrame(() => setTimeout(go));
    setTimeout(go, frameless);
  });

/** Says whether work that begins now has taken its turn's time, in milliseconds. */
export function beginSlice(time = drawn): () => boolean {
  const since = performance.now();
  return () => performance.now() - since >= time;
}
