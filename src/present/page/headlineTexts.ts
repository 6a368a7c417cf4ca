import { wording } from '../../language/wording';

/** Texts around the headlines, and of checks that do not hold. */
export const headlineTexts = {
  heading: wording`Headlines`,
  /** For screen readers, before the change since the last edit; the style sheet inserts it. */
  changedBy: wording`, changed by `,
  /**
   * Before the label of a failing check.
   * @param letters of the plans in which it fails, as a list; blank where there is one plan
   */
  warning: (letters: string) => {
    if (letters === '') return wording`Warning:`;
    return letters.length === 1 ? wording`Warning, plan ${letters}:` : wording`Warning, plans ${letters}:`;
  },
  firstOnly: wording`Show the first only`,
  moreWarnings: (count: number) => wording`and ${count} more warnings`,
} as const;
