import { createEffect, createSignal, on, onCleanup, type Accessor } from 'solid-js';

/** Milliseconds without a change after which what is out of sight follows. */
const moment = 150;
/** Milliseconds without a change after which a finding is read out: more than from one key to the next. */
const rest = 1000;

/** Calls back each time nothing has changed for so many milliseconds. */
function whenSettled(version: Accessor<unknown>, wait: number, back: () => void): void {
  createEffect(
    on(
      version,
      () => {
        const timer = setTimeout(back, wait);
        onCleanup(() => clearTimeout(timer));
      },
      { defer: true },
    ),
  );
}

/** A count that goes up each time nothing has changed for a moment. */
export function createSettled(version: Accessor<number>): Accessor<number> {
  const [settled, setSettled] = createSignal(0);
  whenSettled(version, moment, () => setSettled((count) => count + 1));
  return settled;
}

/** Whether something has just changed, and may at once change again. */
export function createBusy(version: Accessor<unknown>): Accessor<boolean> {
  const [busy, setBusy] = createSignal(false);
  createEffect(on(version, () => setBusy(true), { defer: true }));
  whenSettled(version, rest, () => setBusy(false));
  return busy;
}
