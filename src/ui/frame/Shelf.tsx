import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { shelfTexts } from '../../present/page/shelfTexts';
import { Dropdown } from '../kit/sections/Dropdown';
import type { ShelfProps } from './ShelfEntries';

const ShelfEntries = lazy(async () => ({ default: (await import('./ShelfEntries')).ShelfEntries }));

/** The models kept on this machine, read each time that this list is opened. */
export function Shelf(props: ShelfProps): JSX.Element {
  const [isOpen, setOpen] = createSignal(false);
  return (
    <Dropdown class="models shelf" summary={shelfTexts.summary} onToggle={setOpen} staysOpen>
      <p class="quiet">{shelfTexts.about}</p>
      <Show when={isOpen()}>
        <Suspense fallback={<p role="status">{shelfTexts.reading}</p>}>
          <ShelfEntries {...props} />
        </Suspense>
      </Show>
    </Dropdown>
  );
}
