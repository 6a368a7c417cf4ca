import { createMemo, createSignal, onCleanup, onMount, type Accessor } from 'solid-js';

/** Groups that stand on the page at once: those that are in sight at first. */
const first = 2;

/**
 * How many groups of rows are on the page. In the first moments after a model was opened they come one by one, so that
 * the page answers in between.
 * @param count of all groups
 * @param wanted whether all are wanted at once, as for a jump, a search and print
 */
export function createGroupsInTurn(count: Accessor<number>, wanted: Accessor<boolean>): Accessor<number> {
  const [there, setThere] = createSignal(first);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const next = (): void => {
    if (there() >= count()) {
      setThere(Infinity);
      return;
    }
    setThere(there() + 1);
    timer = setTimeout(next);
  };
  // Before the browser lays out its paper, which may be in the middle of it.
  const all = (): void => {
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
