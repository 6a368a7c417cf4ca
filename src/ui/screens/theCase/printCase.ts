import { createEffect, createSignal, on, onCleanup, type Accessor } from 'solid-js';
import { printOnly } from '../../app/layout/printOnly';

/** Prints the case once its studies are done. */
export interface Print {
  readonly isWaiting: Accessor<boolean>;
  readonly start: () => void;
}

/** Milliseconds that printing waits for studies; those not done by then are left out. */
const patience = 15_000;

/**
 * @param isReady whether all studies to be printed are done
 * @param stay makes the case the question beside the numbers
 */
export function createPrint(isReady: Accessor<boolean>, stay: () => void): Print {
  const [isWaiting, setWaiting] = createSignal(false);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const go = (): void => {
    clearTimeout(timer);
    setWaiting(false);
    printOnly('case');
  };
  createEffect(
    on([isWaiting, isReady], ([waiting, ready]) => {
      if (!waiting) return;
      clearTimeout(timer);
      // Results that are ready reach the page only after all effects have run.
      timer = setTimeout(go, ready ? 0 : patience);
    }),
  );
  onCleanup(() => clearTimeout(timer));
  return {
    isWaiting,
    start: () => {
      stay();
      setWaiting(true);
    },
  };
}
