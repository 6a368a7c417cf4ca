import { frameTexts } from '../../../present/page/frameTexts';
import { createSignal, type Accessor } from 'solid-js';

/** A place on the page from which someone jumped. */
interface Place {
  /** The text of the button that leads back to it. */
  readonly text: string;
  readonly scroll: number;
  readonly focused: Element | null;
}

/** Leads back to where jumps began, the last one first. */
export interface WayBack {
  /** The text of the button for the last jump; undefined where there is none. */
  readonly to: Accessor<string | undefined>;
  /** Remembers the present place before a jump. */
  readonly leave: () => void;
  readonly go: () => void;
  readonly forget: () => void;
}

/** At most this many jumps are remembered. */
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
