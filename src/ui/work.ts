import { createContext, useContext, type Accessor } from 'solid-js';
import type { KeptChoice } from './choice';
import type { Compared } from './compared';
import type { Covered } from './covered';
import type { Drafts } from './drafts';
import type { Live } from './live';
import type { Spot } from './numbers/spot';

/** What the rows and the panels around them share. */
export interface Work {
  readonly live: Live;
  readonly drafts: Drafts;
  readonly compared: Compared;
  readonly choice: KeptChoice;
  readonly spot: Spot;
  readonly covered: Covered;
  /** Goes up each time nothing has changed for a moment: what is out of sight follows then. */
  readonly calm: Accessor<number>;
  /** Whether numbers have just changed, as while somebody types: what is read out waits for the end of it. */
  readonly busy: Accessor<boolean>;
  /** Whether the page is laid out for paper, where everything must stand open. */
  readonly printing: Accessor<boolean>;
}

export const WorkContext = createContext<Work>();

export function useWork(): Work {
  const work = useContext(WorkContext);
  if (work === undefined) throw new Error('A part of the page stands outside of WorkContext.');
  return work;
}
