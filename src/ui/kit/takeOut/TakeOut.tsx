import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import type { DataTable } from '../../../present/table/dataTable';
import type { TakenPicture } from '../../../present/picture/takenPicture';
import { takeOutName } from '../../../present/table/takeOutName';
import './takeOut.css';

const TakeOutChoices = lazy(async () => ({ default: (await import('./TakeOutChoices')).TakeOutChoices }));

export interface TakeOutProps {
  /** What the table or the chart is called. */
  readonly caption: string;
  readonly table?: (() => DataTable) | undefined;
  readonly picture?: (() => Promise<TakenPicture>) | undefined;
  /** Whether figures are still to come; nothing is taken out until all are there. */
  readonly waits?: boolean | undefined;
}

/** The button below a table or a chart by which it is copied or saved. What does so loads once it is pressed. */
export function TakeOut(props: TakeOutProps): JSX.Element {
  const [open, setOpen] = createSignal(false);
  return (
    <details class="take-out" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {takeOutName.open}
        <span class="heard">{takeOutName.of(props.caption)}</span>
      </summary>
      <Show when={open()}>
        <Suspense>
          <TakeOutChoices {...props} />
        </Suspense>
      </Show>
    </details>
  );
}
