import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { amountOfAlone } from '../../../../model/change/budgetLine';
import { withCopy, withoutEntry } from '../../../../model/change/entries';
import { withRowMoved } from '../../../../model/change/rows';
import type { Sheet } from '../../../../model/sheet';
import {
  changeSaid,
  changeTexts as texts,
  copyLabel,
  deletionOf,
  newlyFaulty,
  type Deletion,
} from '../../../../present/numbers/own/entryChanges';
import { usePage } from '../../../app/pageContext';
import { rowId } from '../../../app/store/entryNavigation';
import { ChangeEntry } from '../lineage/ChangeEntry';
import { Links } from '../lineage/Lineage';
import { EntryWords } from './EntryWords';
import './own.css';

/** What can be done with an entry: its formula, its words, a copy, its place, its end. */
export function EntryWork(props: { cell: Cell }): JSX.Element {
  const [asking, setAsking] = createSignal(false);
  return (
    <div class="entry-work">
      <ChangeEntry cell={props.cell} />
      <EntryWords cell={props.cell} />
      <Show when={asking()} fallback={<Commands cell={props.cell} onDelete={() => setAsking(true)} />}>
        <DeleteEntry cell={props.cell} onKeep={() => setAsking(false)} />
      </Show>
    </div>
  );
}

/** Focuses the same command of an entry again, which a move has put on the page anew. */
function focusAgain(row: number, command: string): void {
  requestAnimationFrame(() => {
    const entry = document.getElementById(rowId(row));
    entry?.scrollIntoView({ block: 'nearest' });
    entry?.querySelector<HTMLElement>(`[data-command="${command}"]`)?.focus({ preventScroll: true });
  });
}

function Commands(props: { cell: Cell; onDelete: () => void }): JSX.Element {
  const { store, changes, navigation } = usePage();
  const sheet = (): Sheet => store.shape().sheet;
  const canMove = (by: -1 | 1): boolean => withRowMoved(sheet(), props.cell.row, by) !== sheet();
  const move = (by: -1 | 1): void => {
    const { row, label } = props.cell;
    const before = store.model().sheet;
    const after = withRowMoved(before, row, by);
    if (after === before) return;
    store.replace(after);
    changes.say(changeSaid.moved(label, by), row);
    focusAgain(row, by === -1 ? 'up' : 'down');
  };
  const copy = (): void => {
    const { row, label } = props.cell;
    const model = store.model();
    const copied = copyLabel(model, label);
    const added = withCopy(model.sheet, row, copied, store.origin().file.sheet);
    store.replace(added.sheet);
    changes.say(changeSaid.copied(label, copied), row);
    navigation.goToRow(added.row);
  };
  return (
    <p class="own-words" role="group" aria-label={texts.commands(props.cell.label)}>
      <button type="button" class="word" onClick={copy}>
        {texts.copy}
      </button>
      <button type="button" class="word" data-command="up" aria-disabled={!canMove(-1)} onClick={() => move(-1)}>
        {texts.up}
      </button>
      <button type="button" class="word" data-command="down" aria-disabled={!canMove(1)} onClick={() => move(1)}>
        {texts.down}
      </button>
      <button type="button" class="word" data-command="delete" onClick={() => props.onDelete()}>
        {texts.remove}
      </button>
    </p>
  );
}

function usesIn({ leaves, breaks, unties, tells }: Deletion): number {
  return leaves.length + breaks.length + unties.length + tells;
}

/** What uses the entry and what becomes of that; then one press deletes. */
function DeleteEntry(props: { cell: Cell; onKeep: () => void }): JSX.Element {
  const { store, changes } = usePage();
  const deletion = (): Deletion => deletionOf(store.shape(), props.cell);
  const isUsed = (): boolean => usesIn(deletion()) > 0;
  const amount = createMemo(() => amountOfAlone(store.shape(), props.cell));
  const remove = (also?: Cell): void => {
    const { row, label } = props.cell;
    const before = store.model();
    const found = deletionOf(before, props.cell);
    const after = withoutEntry(before.sheet, row);
    store.replace(also === undefined ? after : withoutEntry(after, also.row));
    changes.say(changeSaid.removed(label, found, newlyFaulty(before, store.model()), also?.label), row);
    requestAnimationFrame(() => document.querySelector<HTMLElement>('.said-line button')?.focus());
  };
  const keep = (): void => {
    const { row } = props.cell;
    props.onKeep();
    focusAgain(row, 'delete');
  };
  return (
    <div
      class="delete-entry"
      role="group"
      aria-label={texts.removeReally(props.cell.label)}
      onKeyDown={(event) => {
        if (event.key === 'Escape') keep();
      }}>
      <p>
        <b>{texts.removeReally(props.cell.label)}</b> {isUsed() ? '' : texts.usedNowhere}
      </p>
      <UsedBy said={texts.leaves} cells={deletion().leaves} />
      <UsedBy said={texts.unties} cells={deletion().unties} />
      <UsedBy said={texts.breaks} cells={deletion().breaks} faulty />
      <Show when={deletion().tells > 0}>
        <p class="message fault">{texts.tells(deletion().tells)}</p>
      </Show>
      <Show when={amount()}>{(also) => <p>{texts.onlyHere(also().label)}</p>}</Show>
      <p class="own-buttons">
        <button
          type="button"
          class="own-press"
          ref={(button) => queueMicrotask(() => button.focus())}
          onClick={() => remove()}>
          {texts.removeYes}
        </button>
        <Show when={amount()}>
          {(also) => (
            <button type="button" class="word" onClick={() => remove(also())}>
              {texts.removeBoth(also().label)}
            </button>
          )}
        </Show>
        <button type="button" class="word" onClick={keep}>
          {texts.removeNo}
        </button>
      </p>
    </div>
  );
}

function UsedBy(props: { said: string; cells: readonly Cell[]; faulty?: boolean }): JSX.Element {
  return (
    <Show when={props.cells.length > 0}>
      <p>
        <span class={props.faulty === true ? 'message fault' : 'quiet'}>{props.said}</span>{' '}
        <Links cells={props.cells} />
      </p>
    </Show>
  );
}
