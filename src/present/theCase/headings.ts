import type { Kind } from './caseOf';

/** The name of a part of a partial budget, what it holds, and the name of its sum. */
interface Heading {
  readonly heading: string;
  readonly means: string;
}

/** The four parts by their names in the trade (NDSU, Introduction to Partial Budgeting; NMSU Guide Z-123, 2021). */
export const headings: Readonly<Record<Kind, Heading>> = {
  addedReturns: { heading: 'Added returns', means: 'what is taken in on top' },
  reducedCosts: { heading: 'Reduced costs', means: 'what need not be spent any more' },
  addedCosts: { heading: 'Added costs', means: 'what must be spent on top' },
  reducedReturns: { heading: 'Reduced returns', means: 'what is no longer taken in' },
};
