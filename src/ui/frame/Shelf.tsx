import { lazy, Show, Suspense, type JSX, type Signal } from 'solid-js';
import { shelfTexts } from '../../present/page/shelfTexts';
import { Dropdown } from '../kit/sections/Dropdown';
import type { ShelfProps } from './ShelfEntries';

const ShelfEntries = lazy(async () => ({ default: (await import('./ShelfEntries')).ShelfEntries }));

interface OpenShelfProps extends ShelfProps {
  readonly open: Signal<boolean>;
}

/** The models kept on this machine, read each time that this list is opened. */
export function Shelf(props: OpenShelfProps): JSX.Element {
  return (
    <Dropdown
      class="models shelf"
      summary={shelfTexts.summary}
      isOpen={props.open[0]()}
      onToggle={props.open[1]}
      staysOpen>
      <p class="quiet">{shelfTexts.about}</p>
      <Show when={props.open[0]()}>
        <Suspense fallback={<p role="status">{shelfTexts.reading}</p>}>
          <ShelfEntries {...props} />
        </Suspense>
      </Show>
    </Dropdown>
  );
}
