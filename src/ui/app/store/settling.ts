import { createEffect, createSignal, on, onCleanup, type Accessor } from 'solid-js';

/** Milliseconds without a change after which rows out of sight are updated. */
const moment = 150;
/** Milliseconds without a change after which screen readers read a finding; longer than between two keystrokes. */
const rest = 1000;

/** Calls back each time that nothing has changed for some milliseconds. */
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

/** Counts up each time that nothing has changed for a moment. */
export function createSettled(version: Accessor<number>): Accessor<number> {
  const [settled, setSettled] = createSignal(0);
  whenSettled(version, moment, () => setSettled((count) => count + 1));
  return settled;
}

/** True from a change until nothing has changed for a second. */
export function createBusy(version: Accessor<unknown>): Accessor<boolean> {
  const [busy, setBusy] = createSignal(false);
  createEffect(on(version, () => setBusy(true), { defer: true }));
  whenSettled(version, rest, () => setBusy(false));
  return busy;
}
