import { wording, wordingOf } from '../../language/wording';

/** Fixed texts of the table of all steps. */
export const resultsTexts = {
  heading: wording`Each step`,
  table: wording`Table of the steps`,
  batches: wording`Batches`,
  from: wordingOf('an end of an interval')`from`,
  to: wordingOf('an end of an interval')`to`,
  needed: wording`Needed in all`,
  standard: wording`Standard time, s`,
  lost: wording`Lost`,
  leftOutBatches: wording`Left out`,
  confidence: wording`Confidence, %`,
  allowance: wording`Allowance, %`,
  allowanceOf: wording`Allowance of the`,
  within: wording`Needed for within, %`,
  leftOut: (batches: number) => wording`${batches} left out`,
  howMany: wording`How many batches are needed`,
} as const;
