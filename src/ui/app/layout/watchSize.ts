import { onCleanup } from 'solid-js';

/** Calls back when an element is first laid out and whenever its size changes, for as long as its owner lasts. */
export function watchSize(element: Element, back: () => void): void {
  const watcher = new ResizeObserver(back);
  watcher.observe(element);
  onCleanup(() => watcher.disconnect());
}
