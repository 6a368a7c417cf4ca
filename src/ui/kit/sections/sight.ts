import { isWantedOnPaper } from '../../app/layout/paper';
import { batch, createEffect, createMemo, createSignal, onCleanup, type Accessor } from 'solid-js';

const always = (): boolean => true;

/** The callback of each watched element. */
const listeners = new Map<Element, (inSight: boolean) => void>();

/** One observer for all elements, so that the browser checks them together once a frame. */
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
 * Whether an element is in sight, or on a paper to be printed soon. What is neither loads and computes nothing.
 * @param near whether the element around it is in sight; while that is not, this one is not watched
 */
export function createSight(
  element: Accessor<Element | undefined>,
  near: Accessor<boolean> = always,
): Accessor<boolean> {
  const [inSight, setInSight] = createSignal(false);
  // Elements are made after the code that asks for them, which may be while they are wanted on paper already.
  const [made, setMade] = createSignal<Element>();
  createEffect(() => {
    const watched = element();
    setMade(watched);
    if (watched === undefined || !near()) setInSight(false);
    else onCleanup(watch(watched, setInSight));
  });
  const wanted = createMemo(() => inSight() || isWantedOnPaper(made()));
  return wanted;
}
