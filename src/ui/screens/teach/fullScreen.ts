import { createSignal, onCleanup, type Accessor } from 'solid-js';

/** An element that can fill the screen, where the browser lets one (Fullscreen API). */
export interface FullScreen {
  readonly isAllowed: boolean;
  readonly isFull: Accessor<boolean>;
  readonly toggle: () => void;
}

export function createFullScreen(element: () => HTMLElement): FullScreen {
  const isFullNow = (): boolean => document.fullscreenElement !== null;
  const [isFull, setFull] = createSignal(isFullNow());
  const follow = (): void => {
    setFull(isFullNow());
  };
  document.addEventListener('fullscreenchange', follow);
  onCleanup(() => {
    document.removeEventListener('fullscreenchange', follow);
    if (isFullNow()) void document.exitFullscreen();
  });
  const toggle = (): void => {
    if (!document.fullscreenEnabled) return;
    // A browser that refuses leaves the page as it is.
    const done = isFullNow() ? document.exitFullscreen() : element().requestFullscreen();
    void done.catch(() => undefined);
  };
  return { isAllowed: document.fullscreenEnabled, isFull, toggle };
}
