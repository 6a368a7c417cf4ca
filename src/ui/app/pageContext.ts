import { createContext, useContext, type Accessor } from 'solid-js';
import type { KeptChoice } from './preferences/choice';
import type { ComparedPlans } from './store/comparedPlans';
import type { StickyHeight } from './layout/stickyHeight';
import type { ChangeSaid } from './store/changeSaid';
import type { Drafts } from './store/drafts';
import type { ModelStore } from './store/modelStore';
import type { EntryNavigation } from './store/entryNavigation';

/** What the rows and the panels around them share. */
export interface PageState {
  readonly store: ModelStore;
  readonly drafts: Drafts;
  readonly compared: ComparedPlans;
  readonly choice: KeptChoice;
  readonly navigation: EntryNavigation;
  /** What is said of the last change of an entry or of the whole model. */
  readonly changes: ChangeSaid;
  readonly stickyHeight: StickyHeight;
  /** Goes up each time nothing has changed for a moment: what is out of sight follows then. */
  readonly settled: Accessor<number>;
  /** Whether numbers have just changed, as while somebody types: what is read out waits for the end of it. */
  readonly busy: Accessor<boolean>;
  /** Whether the page is laid out for paper, where everything must stand open. */
  readonly printing: Accessor<boolean>;
}

export const PageContext = createContext<PageState>();

export function usePage(): PageState {
  const page = useContext(PageContext);
  if (page === undefined) throw new Error('A part of the page stands outside of PageContext.');
  return page;
}
