import { createSignal } from 'solid-js';
import type { LiveCase } from '../../files/live/liveCase';
import { readModel } from '../../files/readModel';
import type { PageState } from '../app/pageContext';
import { createChoice } from '../app/preferences/choice';
import { createMedia } from '../app/preferences/media';
import { createChangeSaid } from '../app/store/changeSaid';
import { createComparedPlans } from '../app/store/comparedPlans';
import { createDrafts } from '../app/store/drafts';
import { createEntryNavigation } from '../app/store/entryNavigation';
import { createLessonState } from '../app/store/lessonState';
import { createModelStore } from '../app/store/modelStore';
import { createBusy, createSettled } from '../app/store/settling';

/** The state of a page that was sent: its model, and what the sender had chosen. */
export function createSentState(live: LiveCase): PageState {
  const { name, bytes } = live.file;
  const { model, file } = readModel(bytes);
  const store = createModelStore(model, { name, shipped: '', opened: Date.now(), bytes, file });
  const compared = createComparedPlans(store);
  compared.setPlan(live.plan);
  compared.setAgainst(live.against);
  const choice = createChoice(store, compared);
  choice.restore(live.choices);
  const [covered] = createSignal(0);
  return {
    store,
    lesson: createLessonState(store, choice),
    drafts: createDrafts(store),
    compared,
    choice,
    navigation: createEntryNavigation(
      store,
      () => undefined,
      () => '',
    ),
    changes: createChangeSaid(store),
    stickyHeight: { height: covered, follow: () => undefined },
    settled: createSettled(store.version),
    busy: createBusy(store.version),
    printing: createMedia('print'),
    isSent: true,
  };
}
