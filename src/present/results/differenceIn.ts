import type { Cell } from '../../model/cell';
import { say, type Phrase } from '../text/phrase';

/** A result of two plans as a sentence speaks of it: `the difference in Margin`. */
export function differenceIn({ label }: Pick<Cell, 'label'>): Phrase {
  return say`the difference in ${label}`;
}
