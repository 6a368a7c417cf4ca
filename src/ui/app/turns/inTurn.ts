import { createMemo, createSignal, onCleanup, onMount, untrack, type Accessor } from 'solid-js';
import { beginSlice } from './slice';

/** A turn for each part, where one takes most of a turn. */
export const oneATurn = (): (() => boolean) => () => true;

/**
 * How many of a list of parts are on the page. In the first moments they come a few at a time, as many as a turn has
 * time for, so that the page answers in between.
 * @param count of all parts
 * @param wanted whether all are wanted at once, as for a jump, a search and print
 * @param begin begins a turn, and says when it is over
 */
export function createInTurn(count: Accessor<number>, wanted: Accessor<boolean>, begin = beginSlice): Accessor<number> {
  const [there, setThere] = createSignal(0);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const next = (): void => {
    const isOver = begin();
    do setThere((parts) => (parts >= untrack(count) ? Infinity : parts + 1));
    while (there() !== Infinity && !isOver());
    if (there() !== Infinity) timer = setTimeout(next);
  };
  // Before the browser lays out its paper, which may be in the middle of it.
  const all = (): void => {
    clearTimeout(timer);
    setThere(Infinity);
  };
  onMount(() => {
    timer = setTimeout(next);
    addEventListener('beforeprint', all);
  });
  onCleanup(() => {
    clearTimeout(timer);
    removeEventListener('beforeprint', all);
  });
  const shown = createMemo(() => (wanted() ? count() : Math.min(there(), count())));
  return shown;
}
