import { createContext, useContext, type Accessor } from 'solid-js';
import type { KeptChoice } from './preferences/choice';
import type { ComparedPlans } from './store/comparedPlans';
import type { StickyHeight } from './layout/stickyHeight';
import type { ChangeSaid } from './store/changeSaid';
import type { Drafts } from './store/drafts';
import type { LessonState } from './store/lessonState';
import type { ModelStore } from './store/modelStore';
import type { EntryNavigation } from './store/entryNavigation';

/** What the parts of the page share. */
export interface PageState {
  /** The model, in which results that a class is to guess first have no number. */
  readonly store: ModelStore;
  readonly drafts: Drafts;
  readonly compared: ComparedPlans;
  readonly choice: KeptChoice;
  readonly navigation: EntryNavigation;
  /** What is said of the last change of an entry or of the whole model. */
  readonly changes: ChangeSaid;
  /** What a class has been told, where the model is a lesson. */
  readonly lesson: LessonState;
  readonly stickyHeight: StickyHeight;
  /** Counts up each time that nothing has changed for a moment; rows out of sight are updated then. */
  readonly settled: Accessor<number>;
  /** Whether numbers are changing, as while somebody types; screen readers wait until they rest. */
  readonly busy: Accessor<boolean>;
  /** Whether the page is laid out for print, where everything is unfolded. */
  readonly printing: Accessor<boolean>;
  /** Whether this is a case that somebody was sent: it has no other questions, and its words are the sender’s. */
  readonly isSent: boolean;
}

export const PageContext = createContext<PageState>();

export function usePage(): PageState {
  const page = useContext(PageContext);
  if (page === undefined) throw new Error('A part of the page stands outside of PageContext.');
  return page;
}
