import { createEffect, createSignal, on, onCleanup, type Accessor } from 'solid-js';
import { printOnly } from '../../app/layout/printOnly';

/** Prints the case once its studies are done. */
export interface Print {
  readonly isWaiting: Accessor<boolean>;
  readonly start: () => void;
}

/** Longest that a print waits for studies, in milliseconds; what is not there then is left out. */
const patience = 15_000;

/**
 * @param isReady whether all that is printed is there
 * @param stay sees to it that the case is what stands beside the numbers
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
      // What has come to be ready is on the page only once all effects are done.
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
