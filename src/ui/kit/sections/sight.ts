import { batch, createEffect, createSignal, onCleanup, type Accessor } from 'solid-js';

const always = (): boolean => true;

/** Who is told whether an element is in sight: one for each element. */
const listeners = new Map<Element, (inSight: boolean) => void>();

/** One for all elements: the browser looks at the page once a frame and not once for each of them. */
let observer: IntersectionObserver | undefined;

function watch(element: Element, tell: (inSight: boolean) => void): () => void {
  observer ??= new IntersectionObserver((entries) =>
    batch(() => {
      for (const { target, isIntersecting } of entries) listeners.get(target)?.(isIntersecting);
    }),
  );
  listeners.set(element, tell);
  observer.observe(element);
  return () => {
    listeners.delete(element);
    observer?.unobserve(element);
  };
}

/**
 * Whether an element has come into sight: what nobody looks at loads and computes nothing.
 * @param near whether what it stands in is in sight; it is not watched while that is not
 */
export function createSight(
  element: Accessor<Element | undefined>,
  near: Accessor<boolean> = always,
): Accessor<boolean> {
  const [inSight, setInSight] = createSignal(false);
  createEffect(() => {
    const watched = element();
    if (watched === undefined || !near()) setInSight(false);
    else onCleanup(watch(watched, setInSight));
  });
  return inSight;
}
