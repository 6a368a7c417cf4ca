import type { Cell } from '../../model/cell';
import { say, type Phrase } from '../text/phrase';

/** Says that a result has no value today. */
export function cannotComputeSentence({ label }: Cell): Phrase {
  return say`${label} cannot be computed today, so it cannot be asked about yet.`;
}
