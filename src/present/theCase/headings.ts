import { wording } from '../../language/wording';
import type { Kind } from './caseOf';

/** The name of a part of a partial budget, what it holds, and the name of its sum. */
interface Heading {
  readonly heading: string;
  readonly means: string;
}

/** The four parts by their names in the trade (NDSU, Introduction to Partial Budgeting; NMSU Guide Z-123, 2021). */
export const headings: Readonly<Record<Kind, Heading>> = {
  addedReturns: { heading: wording`Added returns`, means: wording`what is taken in on top` },
  reducedCosts: { heading: wording`Reduced costs`, means: wording`what need not be spent any more` },
  addedCosts: { heading: wording`Added costs`, means: wording`what must be spent on top` },
  reducedReturns: { heading: wording`Reduced returns`, means: wording`what is no longer taken in` },
};
