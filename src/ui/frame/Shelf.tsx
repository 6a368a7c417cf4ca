import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { shelfTexts } from '../../present/page/shelfTexts';
import type { ShelfDatabase } from '../app/shelf/database';
import { Dropdown } from '../kit/sections/Dropdown';

const ShelfEntries = lazy(async () => ({ default: (await import('./ShelfEntries')).ShelfEntries }));

export interface ShelfProps {
  readonly database: ShelfDatabase;
  /** The id of the model that is open here. */
  readonly here: string;
  readonly onOpen: (id: string) => void;
}

/** The models that are kept on this machine, read each time that they are turned to. */
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
