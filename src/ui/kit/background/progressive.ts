import { createEffect, createSignal, untrack, type Accessor } from 'solid-js';
import { createBackground, type WorkStage } from './background';

/** What was worked out, and what it was asked of. */
export interface ProgressiveAnswer<Ask, Found> {
  readonly of: Ask;
  readonly found: Found;
  /** Whether no better answer follows. */
  readonly done: boolean;
}

/** Steps through better and better answers; each is shown once, and the last once more as the last. */
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
 * Works something out between frames while it is in sight. The newest request counts, and until it is answered the last
 * answer stays.
 * @param work better and better answers; `undefined` is only a breath between two steps
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
