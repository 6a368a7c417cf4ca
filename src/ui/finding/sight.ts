import { createEffect, createSignal, onCleanup, type Accessor } from 'solid-js';

const always = (): boolean => true;

/**
 * Whether an element has come into sight: what nobody looks at loads and computes nothing.
 * @param near whether what it stands in is in sight; it is not watched while that is not
 */
export function createSight(
  element: Accessor<Element | undefined>, near: Accessor<boolean> = always,
): Accessor<boolean> {
  const [inSight, setInSight] = createSignal(false);
  createEffect(() => {
    const watched = element();
    if (watched === undefined || !near()) {
      setInSight(false);
      return;
    }
    const watch = new IntersectionObserver((entries) => setInSight(entries.at(-1)?.isIntersecting === true));
    watch.observe(watched);
    onCleanup(() => watch.disconnect());
  });
  return inSight;
}
