/**
 * Work in steps of a few milliseconds, so that whoever runs it may pause between them or stop: each step yields the
 * share that is done, above 0 and up to 1.
 */
export type Steps<T> = Generator<number, T>;

/** Does all the steps at once. */
export function finish<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** The same steps with their shares laid between two others. */
export function* within<T>(start: number, end: number, steps: Steps<T>): Steps<T> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    yield start + step.value * (end - start);
  }
}

/** Does something with each item, in order; a step takes some of them. */
export function* eachInSteps<T>(items: readonly T[], act: (item: T, index: number) => void, perStep = 50): Steps<void> {
  for (const [index, item] of items.entries()) {
    act(item, index);
    if ((index + 1) % perStep === 0) yield (index + 1) / items.length;
  }
}

/** What each item becomes. */
export function* mapInSteps<T, U>(
  items: readonly T[],
  turn: (item: T, index: number) => U,
  perStep?: number,
): Steps<U[]> {
  const turned: U[] = [];
  yield* eachInSteps(items, (item, index) => turned.push(turn(item, index)), perStep);
  return turned;
}
