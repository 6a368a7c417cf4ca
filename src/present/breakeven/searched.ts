import type { BreakevenPoints } from '../../study/breakeven';
import type { LineName } from '../results/resultLines';

/** The result of a search, for each line. */
export type Searched = Partial<Record<LineName, BreakevenPoints>>;
