import { wording } from '../../language/wording';

/** Words round the partial budget of a case. */
export const budgetTexts = {
  caption: (unit: string) => wording`Partial budget: what changes, each thing once, in ${unit}`,
  part: wording`part`,
  amount: wording`amount`,
  sum: wording`sum`,
  netChange: wording`Net change`,
} as const;
