import { createEffect, createSignal, untrack, type Accessor } from 'solid-js';
import { createBackground, type WorkStage } from './background';

/** An answer with the question that it belongs to. */
export interface ProgressiveAnswer<Ask, Found> {
  readonly of: Ask;
  readonly found: Found;
  /** Whether this is the final answer. */
  readonly done: boolean;
}

/** A stage that steps through better and better answers. Each is shown once, and the last one again as final. */
export function progressiveStage<Found>(
  answers: Iterator<Found | undefined, void>,
  show: (found: Found, done: boolean) => void,
): WorkStage {
  let latest: { readonly found: Found } | undefined;
  let isNew = false;
  return {
    step: () => {
      const next = answers.next();
      if (next.done !== true && next.value !== undefined) {
        latest = { found: next.value };
        isNew = true;
      }
      return next.done === true;
    },
    show: (done) => {
      if (latest !== undefined && (isNew || done)) show(latest.found, done);
      isNew = false;
    },
  };
}

/**
 * Works out answers between frames while they are in sight. A new question replaces the one before, whose last answer
 * stays until the new one has an answer.
 * @param work gives better and better answers; `undefined` is a step without one, at which the page can pause
 */
export function createProgressive<Ask, Found>(
  ask: Accessor<Ask>,
  inSight: Accessor<boolean>,
  work: (ask: Ask) => Iterator<Found | undefined, void>,
): Accessor<ProgressiveAnswer<Ask, Found> | undefined> {
  const [worked, setWorked] = createSignal<ProgressiveAnswer<Ask, Found>>();
  const background = createBackground();
  createEffect(() => {
    const of = ask();
    background.stop();
    const known = untrack(worked);
    const isAnswered = known !== undefined && known.of === of && known.done;
    if (!inSight() || isAnswered) return;
    background.start([progressiveStage(work(of), (found, done) => setWorked({ of, found, done }))]);
  });
  return worked;
}
