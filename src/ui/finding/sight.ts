import { createSignal, onCleanup, onMount, type Accessor } from 'solid-js';

/** Whether an element has come into sight: what nobody looks at loads and computes nothing. */
export function createSight(element: Accessor<Element | undefined>): Accessor<boolean> {
  const [inSight, setInSight] = createSignal(false);
  onMount(() => {
    const watch = new IntersectionObserver((entries) => setInSight(entries.at(-1)?.isIntersecting === true));
    const watched = element();
    if (watched !== undefined) watch.observe(watched);
    onCleanup(() => watch.disconnect());
  });
  return inSight;
}
