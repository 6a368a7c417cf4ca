import { createEffect, on, onCleanup, onMount, Show, untrack, type JSX, type Signal } from 'solid-js';
import { linkStart } from '../app/files/modelLink';
import { usePage } from '../app/pageContext';
import type { Place, Visit } from '../app/places/place';
import { createVisits } from '../app/places/visits';
import { methodEntrySetting, questionSetting } from '../app/preferences/settings/page';
import type { Beginning, Kept } from '../app/shelf/beginning';
import type { Keeper } from '../app/shelf/keeper';
import { isSampleId, isShelfFile, isShelfWork, sampleId } from '../app/shelf/record';
import type { Jump } from '../app/store/entryNavigation';
import type { Origin } from '../app/store/snapshot';
import type { ScreenQuestion } from '../../present/page/questions';

export interface BackAndForthProps {
  readonly keeper: Keeper;
  readonly kept: Kept;
  readonly beginning: Beginning;
  /** Where the page began: the question, the one beside the numbers, and the id of the model. */
  readonly first: readonly [question: ScreenQuestion, side: ScreenQuestion, model: string];
  /** The question beside the numbers, and whether the list of kept models is open. */
  readonly side: Signal<ScreenQuestion>;
  readonly shelf: Signal<boolean>;
}

/** The id under which a visit's model can be opened; undefined where it is not on the shelf and is no sample. */
async function openableId({ database }: Kept, { model, shipped }: Visit): Promise<string | undefined> {
  const { work, file } = await database.read(model);
  if (isShelfWork(work) && (isShelfFile(file) || isSampleId(model))) return model;
  return shipped === '' ? undefined : sampleId(shipped);
}

function createOpenModel(props: BackAndForthProps, origin: () => Origin) {
  return async (visit: Visit): Promise<boolean> => {
    // What is not kept stays open.
    if (untrack(props.keeper.state).state === 'failed') return false;
    const id = await openableId(props.kept, visit).catch(() => undefined);
    const open = props.kept.memory.model() ?? sampleId(untrack(origin).shipped);
    if (id === undefined || id === open) return false;
    props.keeper.open(id);
    return true;
  };
}

function placeAtStart({ first: [question, side, model], beginning }: BackAndForthProps): Place {
  const { shipped } = beginning.origin;
  return { question, side, entry: '', shelf: false, model, shipped, row: undefined };
}

/**
 * Makes each question, model and link that somebody goes to an entry of the browser's history, and goes where its Back
 * and Forward say. Draws the button that leads back to where a link was followed.
 */
export function BackAndForth(props: BackAndForthProps): JSX.Element {
  const { store, choice, navigation } = usePage();
  const question = (): ScreenQuestion => choice.get(questionSetting);
  const here = (): Place => ({
    question: question(),
    side: props.side[0](),
    entry: question() === 'method' ? choice.get(methodEntrySetting) : '',
    shelf: props.shelf[0](),
    model: (store.origin(), props.keeper.id()),
    shipped: store.origin().shipped,
    row: undefined,
  });
  let jump: Jump | undefined;
  const show = (place: Place): void => {
    props.side[1](place.side);
    // What is set is written: a page that is only loaded again must not count as the newest work.
    if (place.entry !== here().entry && place.entry !== '') choice.set(methodEntrySetting, place.entry);
    if (place.question !== question()) choice.set(questionSetting, place.question);
    props.shelf[1](place.shelf);
    if (place.row !== undefined && place.question === 'numbers') navigation.goToRow(place.row);
    jump = navigation.jumped();
  };
  const start = untrack(() => placeAtStart(props));
  // A model can get another id while it is open, as a copy does.
  const openAs = new Map<string, Origin>([[start.model, untrack(() => props.beginning.origin)]]);
  const isOpen = (id: string): boolean => openAs.get(id) === untrack(store.origin);
  const openModel = createOpenModel(props, store.origin);
  const visits = createVisits(start, { here: () => untrack(here), isOpen, openModel, show });
  // One step, whatever changes at once: the model and, with it, the question.
  let isDue = false;
  const arrive = (): void => {
    isDue = false;
    const now = untrack(navigation.jumped);
    const followed = now === jump ? undefined : now;
    jump = now;
    visits.arrive(followed);
  };
  createEffect(() => {
    const place = here();
    navigation.jumped();
    openAs.set(place.model, untrack(store.origin));
    if (!isDue) queueMicrotask(arrive);
    isDue = true;
  });
  createEffect(on(store.version, visits.forget, { defer: true }));
  const follow = (): void => {
    // The model of a link is opened by whoever listens for links, who hears of the address only after this.
    if (!location.hash.startsWith(linkStart)) void visits.follow();
  };
  onMount(() => {
    follow();
    addEventListener('popstate', follow);
    onCleanup(() => removeEventListener('popstate', follow));
  });
  return (
    <Show when={visits.wayBack()} keyed>
      {(text) => (
        <button type="button" class="word way-back" onClick={visits.goBack}>
          {text}
        </button>
      )}
    </Show>
  );
}
