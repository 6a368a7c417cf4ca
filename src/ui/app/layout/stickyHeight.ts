import { createEffect, createSignal, type Accessor } from 'solid-js';
import { watchSize } from './watchSize';

/** Height of the headlines, which stay at the top of the page and cover what scrolls below them. */
export interface StickyHeight {
  /** In pixels. */
  readonly height: Accessor<number>;
  /** Follows the height of the element that covers the top. */
  follow(element: HTMLElement): void;
}

/** Also sets the style property `--covered`, by which the page scrolls a target clear of the headlines. */
export function createStickyHeight(): StickyHeight {
  const [height, setHeight] = createSignal(0);
  createEffect(() => document.documentElement.style.setProperty('--covered', `${height()}px`));
  return {
    height,
    follow: (element) => watchSize(element, () => setHeight(element.offsetHeight)),
  };
}
