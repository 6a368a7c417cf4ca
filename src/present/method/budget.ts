import type { Chapter } from './entry';

export const budget: Chapter = {
  heading: 'The case',
  entries: [
    {
      id: 'partial budget',
      what: 'Partial budget',
      how: 'The entries that the model’s budget column marks, in the plan that is taken less in the one that is given up. Each change stands once, in one of four parts: returns that rise or fall, costs that fall or rise. What is the same in both plans is left out. In amounts each line is rounded by itself to the currency’s minor unit; the sums are of exact numbers, and where the two part it is said.',
      formulas: [
        '*net change* = (added returns + reduced costs) − (added costs + reduced returns)',
        '*net change* = (Σ returns − Σ costs)_{B} − (Σ returns − Σ costs)_{A}',
      ],
      design:
        'How often it pays is counted in at most 100,000 draws, with the start number of How sure; where it turns is searched as a switching value is, of the net change itself.',
      source: 'NDSU, Introduction to Partial Budgeting; NMSU Guide Z-123 (2021).',
      limits:
        'One usual year: the value of time, what is paid once, and the way to get there are not in it, unless an entry spreads them over the years. Fixed costs that do not change are left out, so it says nothing of whether the farm as a whole pays.',
      where: 'The case.',
    },
  ],
};
