import { frameTexts } from '../../../present/page/frameTexts';
import { createSignal, type Accessor } from 'solid-js';

/** A place on the page that a jump left. */
interface Place {
  /** What the way back to it says. */
  readonly text: string;
  readonly scroll: number;
  readonly focused: Element | null;
}

/** The way back from jumps, one by one. */
export interface WayBack {
  /** What says where it leads; undefined where nothing was left. */
  readonly to: Accessor<string | undefined>;
  /** Remembers the place that a jump is about to leave. */
  readonly leave: () => void;
  readonly go: () => void;
  readonly forget: () => void;
}

/** Jumps that can be gone back. */
const longest = 30;

function placeNow(): Place {
  const focused = document.activeElement;
  const entry = focused?.closest('.entry')?.querySelector('.ask')?.textContent;
  const text = typeof entry === 'string' ? frameTexts.backTo(entry) : frameTexts.backWhereYouWere;
  return { text, scroll: scrollY, focused };
}

export function createWayBack(): WayBack {
  const [places, setPlaces] = createSignal<readonly Place[]>([]);
  return {
    to: () => places().at(-1)?.text,
    leave: () => {
      const place = placeNow();
      setPlaces((before) => [...before.slice(1 - longest), place]);
    },
    go: () => {
      const place = places().at(-1);
      setPlaces((before) => before.slice(0, -1));
      if (place === undefined) return;
      scrollTo({ top: place.scroll });
      if (place.focused instanceof HTMLElement) place.focused.focus({ preventScroll: true });
    },
    forget: () => {
      setPlaces([]);
    },
  };
}
