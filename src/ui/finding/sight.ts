import { createSignal, onCleanup, onMount, type Accessor } from 'solid-js';

/**
 * Whether an element has come into sight: what nobody looks at loads and computes nothing.
 * @param margin how near the screen counts as in sight, such as `25%` of its height
 */
export function createSight(element: Accessor<Element | undefined>, margin = '0px'): Accessor<boolean> {
  const [inSight, setInSight] = createSignal(false);
  onMount(() => {
    const watch = new IntersectionObserver((entries) => setInSight(entries.at(-1)?.isIntersecting === true), {
      rootMargin: `${margin} 0px`,
    });
    const watched = element();
    if (watched !== undefined) watch.observe(watched);
    onCleanup(() => watch.disconnect());
  });
  return inSight;
}
