import { createEffect, createSignal, onCleanup, type Accessor } from 'solid-js';

/** Milliseconds after which a browser has looked at fields that came onto the page, for what it could fill in. */
const looked = 1500;

/**
 * Whether parts of the page are so new that the browser still looks at their fields, one by one: what it then skips of
 * the page it lays out for each anew. True from the beginning until a moment after all of them stand.
 * @param all whether all of them stand
 */
export function createFresh(all: Accessor<boolean>): Accessor<boolean> {
  const [isFresh, setFresh] = createSignal(true);
  createEffect(() => {
    if (!all() || !isFresh()) return;
    const timer = setTimeout(() => setFresh(false), looked);
    onCleanup(() => clearTimeout(timer));
  });
  return isFresh;
}
