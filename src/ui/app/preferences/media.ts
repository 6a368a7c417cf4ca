import { createMemo, createSignal, onCleanup, type Accessor } from 'solid-js';

/** Whether a media query holds, now and while the page is open. */
export function createMedia(query: string): Accessor<boolean> {
  const list = matchMedia(query);
  const [holds, setHolds] = createSignal(list.matches);
  const follow = (): void => {
    setHolds(list.matches);
  };
  list.addEventListener('change', follow);
  onCleanup(() => list.removeEventListener('change', follow));
  return holds;
}

/** The same on the screen; for print it keeps the value that it has on the screen, so that what is shown is printed. */
export function createScreenMedia(query: string): Accessor<boolean> {
  const [holds, paper] = [createMedia(query), createMedia('print')];
  // Of the two queries that change for print, either may report first.
  const onPaper = (): boolean => paper() || matchMedia('print').matches;
  const kept = createMemo<boolean>((before) => (onPaper() ? before : holds()), holds());
  return kept;
}

/** Whether the numbers and a question fit side by side; the same width as in layout.css. */
export const roomForBoth = '(min-width: 1100px)';
