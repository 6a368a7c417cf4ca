import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { takeOutName } from '../../../present/table/takeOutName';
import type { TakenThing } from './takenThing';
import './choices.css';

const TakeOutChoices = lazy(async () => ({ default: (await import('./TakeOutChoices')).TakeOutChoices }));

/** The button below a table or a chart by which it is copied or saved. What does so loads once it is pressed. */
export function TakeOut(props: TakenThing): JSX.Element {
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
