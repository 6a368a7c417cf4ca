import type { Choice } from '../../app/screenProps';
import type { KeptTrials } from './keptTrials';

/** What both watches, the small one and that over the whole window, are given. */
export interface WatchProps {
  readonly choice: Choice;
  readonly kept: KeptTrials;
  /** The chosen step; blank where there is none yet. */
  readonly step: string;
  /** Names of steps to offer. */
  readonly names: readonly string[];
  readonly choose: (step: string) => void;
}
