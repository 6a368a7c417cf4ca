import { createResource, createSignal, For, Show, type JSX } from 'solid-js';
import { shelfTexts } from '../../present/page/shelfTexts';
import { versionTexts } from '../../present/page/versionTexts';
import { usePage } from '../app/pageContext';
import { leaveForModel } from '../app/places/visits';
import { localMoment } from '../app/preferences/localMoment';
import { withChanges } from '../app/shelf/changes';
import type { ShelfDatabase } from '../app/shelf/database';
import { deleteModel } from '../app/shelf/deleteModel';
import type { Keeper } from '../app/shelf/keeper';
import { isPersisted } from '../app/shelf/persistence';
import { duplicate, listShelf, nextAfter, saveAside, saveEntry, type ShelfList } from '../app/shelf/shelfEntries';
import { storageFault } from '../app/shelf/storageFault';
import { goBackOnShelf, type State } from '../app/shelf/versionList';
import { withOwnTexts } from '../app/shelf/versions';
import { ShelfEntry } from './ShelfEntry';
import { VersionList } from './VersionList';
import './entries.css';

export interface ShelfProps {
  readonly database: ShelfDatabase;
  readonly keeper: Keeper;
  /** Says what was done, above the page. */
  readonly say: (text: string) => void;
}

/** Reads the shelf, and again after something was done to it. */
function createList(database: ShelfDatabase) {
  const [failure, setFailure] = createSignal('');
  const failed = (reason: unknown): undefined => {
    setFailure(shelfTexts.notRead(storageFault(reason)));
    return undefined;
  };
  const [list, { refetch }] = createResource((): Promise<ShelfList | undefined> => listShelf(database).catch(failed));
  const act = async (deed: Promise<void>): Promise<void> => {
    try {
      await deed;
      await refetch();
    } catch (reason) {
      failed(reason);
    }
  };
  return { list, failure, act };
}

function openModel({ keeper }: ShelfProps, id: string): void {
  leaveForModel();
  keeper.open(id);
}

function remove({ database, keeper }: ShelfProps, id: string, list: ShelfList | undefined): Promise<void> {
  if (id === keeper.id()) leaveForModel(true);
  return deleteModel(database, keeper, id, nextAfter(list, id));
}

/** The models on the shelf, newest first, and below them values that cannot be read. */
export function ShelfEntries(props: ShelfProps): JSX.Element {
  const { store, choice } = usePage();
  // The page has one shelf.
  // eslint-disable-next-line solid/reactivity
  const { list, failure, act } = createList(props.database);
  const [persisted] = createResource(isPersisted);
  const whereIs = (id: string): 'here' | 'elsewhere' | '' => {
    if (id === props.keeper.id()) return 'here';
    return list()?.held.has(id) === true && !props.keeper.has(id) ? 'elsewhere' : '';
  };
  const goBack = async (id: string, state: State, withWords: boolean): Promise<void> => {
    if (whereIs(id) === 'here') {
      await props.keeper.saveVersion();
      store.replace(withChanges(store.origin().file.sheet, state));
      if (withWords) choice.restore(withOwnTexts(choice.kept(), state.own ?? {}));
    } else await goBackOnShelf(props.database, id, state, withWords);
    props.say((withWords ? versionTexts.wentBackWithWords : versionTexts.wentBack)(localMoment(state.at)));
  };
  return (
    <>
      <Show when={failure()}>
        <p class="message fault" role="alert">
          {failure()}
        </p>
      </Show>
      <Show when={persisted() !== undefined}>
        <p class="quiet">{persisted() === true ? shelfTexts.persisted : shelfTexts.notPersisted}</p>
      </Show>
      <Show when={list()?.works.length === 0}>
        <p>{shelfTexts.none}</p>
      </Show>
      <ul class="shelf-entries">
        <For each={list()?.works}>
          {(work) => (
            <ShelfEntry
              work={work}
              where={whereIs(work.id)}
              onOpen={() => openModel(props, work.id)}
              onDuplicate={() => void act(duplicate(props.database, work.id))}
              onSave={() => void act(saveEntry(props.database, work.id))}
              onDelete={() => void act(remove(props, work.id, list()))}
              versions={(title) => (
                <VersionList
                  database={props.database}
                  id={work.id}
                  title={title}
                  isElsewhere={whereIs(work.id) === 'elsewhere'}
                  choice={whereIs(work.id) === 'here' ? choice.kept() : work.choice}
                  onGoBack={(state, withWords) => void act(goBack(work.id, state, withWords))}
                />
              )}
            />
          )}
        </For>
      </ul>
      <Aside list={list()} />
    </>
  );
}

/** Values that this version cannot read, each to be saved as a file. */
function Aside(props: { list: ShelfList | undefined }): JSX.Element {
  return (
    <Show when={(props.list?.aside.length ?? 0) > 0}>
      <h2>{shelfTexts.asideHeading}</h2>
      <ul class="shelf-entries">
        <For each={props.list?.aside}>
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
  );
}
