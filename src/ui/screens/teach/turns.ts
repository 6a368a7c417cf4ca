import { onCleanup } from 'solid-js';

interface Turns {
  readonly turn: (by: -1 | 1) => void;
  /** Shows or hides the answer. */
  readonly toggle: () => void;
  /** Fills the screen or leaves it. */
  readonly fill: () => void;
}

/** What a key does, by its name; presenters send the page keys (common practice, no source). */
function workOf(key: string, { turn, toggle, fill }: Turns): (() => void) | undefined {
  switch (key) {
    case 'ArrowRight':
    case 'PageDown':
      return () => turn(1);
    case 'ArrowLeft':
    case 'PageUp':
      return () => turn(-1);
    case 'Enter':
      return toggle;
    case 'f':
    case 'F':
      return fill;
    default:
      return undefined;
  }
}

/** Whether a key belongs to what has the focus: letters to a field, Enter to a button or link. */
function isTaken({ key, target }: KeyboardEvent): boolean {
  if (!(target instanceof Element)) return false;
  if (target.matches('input, textarea, select')) return !key.startsWith('Page');
  return key === 'Enter' && target.matches('button, a, summary');
}

/** Turns steps by the keys of a keyboard or a presenter, while the component that calls it is on the page. */
export function listenForTurns(turns: Turns): void {
  const follow = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey || isTaken(event)) return;
    const work = workOf(event.key, turns);
    if (work === undefined) return;
    event.preventDefault();
    work();
  };
  addEventListener('keydown', follow);
  onCleanup(() => removeEventListener('keydown', follow));
}
