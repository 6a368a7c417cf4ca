import { createMemo, For, Show, type JSX } from 'solid-js';
import type { SharedFile } from '../../files/sharedFile';
import { liveTexts } from '../../present/live/liveTexts';
import { usePage } from '../app/pageContext';
import { fileText } from '../app/files/saving';
import { NumberRow } from './NumberRow';
import { SaveModel } from './SaveModel';
import type { SentRows } from './sentRows';

/** The numbers on which a case rests, each in a field, and what can be done with all of them. */
export function NumbersToMove(props: { rows: SentRows; address: string }): JSX.Element {
  const { store } = usePage();
  const sheet = store.model().sheet;
  /** Untouched, it is what was sent to the byte. */
  const file = createMemo((): SharedFile => {
    const { name, bytes } = store.origin();
    return { name, bytes: store.model().sheet === sheet ? bytes : new TextEncoder().encode(fileText(store)) };
  });
  return (
    <section class="numbers two-plans" id="numbers" aria-labelledby="numbers-heading">
      <h2 id="numbers-heading" tabindex="-1">
        {liveTexts.move}
      </h2>
      <p class="quiet">{props.rows.groups().length > 0 ? liveTexts.moveHint : liveTexts.noneToMove}</p>
      <p class="moved" role="status">
        {liveTexts.changed(props.rows.changed())}{' '}
        <Show when={props.rows.changed() > 0}>
          <button type="button" class="link" onClick={() => props.rows.putAllBack()}>
            {liveTexts.allBack}
          </button>
        </Show>
      </p>
      <For each={props.rows.groups()}>
        {(group) => (
          <section class="group-of-numbers" aria-label={group.heading || liveTexts.move}>
            <Show when={group.heading}>
              <h3 dir="auto">{group.heading}</h3>
            </Show>
            <ul class="entries">
              <For each={group.inputs}>{(movable) => <NumberRow movable={movable} rows={props.rows} />}</For>
            </ul>
          </section>
        )}
      </For>
      <SaveModel file={file} isChanged={() => props.rows.changed() > 0} address={props.address} />
    </section>
  );
}
