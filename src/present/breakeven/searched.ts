import type { BreakevenPoints } from '../../study/breakeven';
import type { LineName } from '../results/resultLines';

/** What was found, by line. */
export type Searched = Partial<Record<LineName, BreakevenPoints>>;
