import { createEffect, createSignal, type Accessor } from 'solid-js';
import { watchSize } from './watchSize';

/** How much of the page's top the headlines cover, so that nothing hides below them. */
export interface StickyHeight {
  /** Pixels. */
  readonly height: Accessor<number>;
  /** Follows the height of what covers the top. */
  follow(element: HTMLElement): void;
}

/** Told to the page for whatever is jumped to; what stays in place below the headlines is told by its own style. */
export function createStickyHeight(): StickyHeight {
  const [height, setHeight] = createSignal(0);
  createEffect(() => document.documentElement.style.setProperty('--covered', `${height()}px`));
  return {
    height,
    follow: (element) => watchSize(element, () => setHeight(element.offsetHeight)),
  };
}
