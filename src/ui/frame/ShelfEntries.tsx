import { createResource, createSignal, For, Show, type JSX } from 'solid-js';
import { entryText, shelfTexts } from '../../present/page/shelfTexts';
import { localFormat } from '../app/preferences/localFormat';
import { reasonText } from '../app/reasonText';
import type { ShelfDatabase } from '../app/shelf/database';
import type { ShelfWork } from '../app/shelf/record';
import { duplicate, listShelf, saveAside, saveEntry, type ShelfList } from '../app/shelf/shelfEntries';
import { commonTexts } from '../../present/text/commonTexts';
import './entries.css';

export interface ShelfProps {
  readonly database: ShelfDatabase;
  /** Id of the model open on this page. */
  readonly here: string;
  readonly onOpen: (id: string) => void;
}

function titleOf({ title, isCopy }: ShelfWork): string {
  const name = title === '' ? shelfTexts.unnamed : title;
  return isCopy ? shelfTexts.copy(name) : name;
}

/** The models on the shelf, newest first, and below them values that cannot be read. */
export function ShelfEntries(props: ShelfProps): JSX.Element {
  const [failure, setFailure] = createSignal('');
  const [list, { refetch }] = createResource(async (): Promise<ShelfList | undefined> => {
    try {
      return await listShelf(props.database);
    } catch (reason) {
      setFailure(shelfTexts.notRead(reasonText(reason)));
      return undefined;
    }
  });
  /** Reads the shelf again after something was done to it. */
  const act = async (deed: Promise<void>): Promise<void> => {
    try {
      await deed;
      await refetch();
    } catch (reason) {
      setFailure(shelfTexts.notRead(reasonText(reason)));
    }
  };
  return (
    <>
      <Show when={failure()}>
        <p class="message fault" role="alert">
          {failure()}
        </p>
      </Show>
      <Show when={list()?.works.length === 0}>
        <p>{shelfTexts.none}</p>
      </Show>
      <ul class="shelf-entries">
        <For each={list()?.works}>
          {(work) => (
            <ShelfEntry
              work={work}
              where={work.id === props.here ? 'here' : list()?.held.has(work.id) === true ? 'elsewhere' : ''}
              onOpen={() => props.onOpen(work.id)}
              onDuplicate={() => void act(duplicate(props.database, work.id))}
              onSave={() => void act(saveEntry(props.database, work.id))}
              onDelete={() => void act(props.database.remove(work.id))}
            />
          )}
        </For>
      </ul>
      <Show when={(list()?.aside.length ?? 0) > 0}>
        <h2>{shelfTexts.asideHeading}</h2>
        <ul class="shelf-entries">
          <For each={list()?.aside}>
            {({ id, value }) => (
              <li>
                <span class="shelf-title">{id}</span>{' '}
                <button type="button" class="word" onClick={() => saveAside(id, value)}>
                  {shelfTexts.saveAside}
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
    </>
  );
}

interface EntryProps {
  readonly work: ShelfWork;
  /** Where it is open. */
  readonly where: 'here' | 'elsewhere' | '';
  readonly onOpen: () => void;
  readonly onDuplicate: () => void;
  readonly onSave: () => void;
  readonly onDelete: () => void;
}

/** One model with its actions; a model that is open on any page cannot be deleted. */
function ShelfEntry(props: EntryProps): JSX.Element {
  const [asking, setAsking] = createSignal(false);
  const title = (): string => titleOf(props.work);
  return (
    <li>
      <span class="shelf-title">{title()}</span>
      <span class="quiet">{entryText(props.work.name, new Date(props.work.at), props.work.size, localFormat)}</span>
      <span class="shelf-deeds" role="group" aria-label={shelfTexts.each(title())}>
        <Show when={props.where !== 'here'} fallback={<span class="quiet">{shelfTexts.openHere}</span>}>
          <button type="button" class="word" onClick={() => props.onOpen()}>
            {shelfTexts.open}
          </button>
        </Show>
        <button type="button" class="word" onClick={() => props.onDuplicate()}>
          {shelfTexts.duplicate}
        </button>
        <button type="button" class="word" onClick={() => props.onSave()}>
          {commonTexts.saveFile}
        </button>
        <Show when={props.where === 'elsewhere'}>
          <span class="quiet">{shelfTexts.openElsewhere}</span>
        </Show>
        <Show when={props.where === '' && !asking()}>
          <button type="button" class="word" onClick={() => setAsking(true)}>
            {shelfTexts.delete}
          </button>
        </Show>
        <Show when={asking()}>
          <span class="confirm">
            {shelfTexts.deleteReally(title())}{' '}
            <button
              type="button"
              class="word"
              ref={(button) => queueMicrotask(() => button.focus())}
              onClick={() => props.onDelete()}>
              {shelfTexts.deleteYes}
            </button>
            <button type="button" class="word" onClick={() => setAsking(false)}>
              {shelfTexts.deleteNo}
            </button>
          </span>
        </Show>
      </span>
    </li>
  );
}
