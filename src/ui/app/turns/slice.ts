/** Milliseconds of work after which the page gets a turn: a third of a frame, the rest draws what came of it. */
const length = 5;

/** Lets the browser draw and answer before the work goes on. */
export const nextTurn = (): Promise<void> => new Promise((go) => setTimeout(go));

/** Says whether work that begins now has taken its turn's time. */
export function beginSlice(): () => boolean {
  const since = performance.now();
  return () => performance.now() - since >= length;
}
