import { lazy, Show, Suspense, type JSX } from 'solid-js';
import { shelfTexts } from '../../present/page/shelfTexts';
import { Dropdown } from '../kit/sections/Dropdown';
import type { ShelfProps } from './ShelfEntries';

const ShelfEntries = lazy(async () => ({ default: (await import('./ShelfEntries')).ShelfEntries }));

interface OpenShelfProps extends ShelfProps {
  readonly isOpen: boolean;
  readonly onToggle: (isOpen: boolean) => void;
}

/** The models kept on this machine, read each time that this list is opened. */
export function Shelf(props: OpenShelfProps): JSX.Element {
  return (
    <Dropdown
      class="models shelf"
      summary={shelfTexts.summary}
      isOpen={props.isOpen}
      onToggle={props.onToggle}
      staysOpen>
      <p class="quiet">{shelfTexts.about}</p>
      <Show when={props.isOpen}>
        <Suspense fallback={<p role="status">{shelfTexts.reading}</p>}>
          <ShelfEntries {...props} />
        </Suspense>
      </Show>
    </Dropdown>
  );
}
