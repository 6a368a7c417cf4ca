import { wording } from '../../language/wording';

/** Texts around the headlines, and of checks that do not hold. */
export const headlineTexts = {
  heading: wording`Headlines`,
  /** For screen readers, before the change since the last edit; the style sheet inserts it. */
  changedBy: wording`, changed by `,
  /** Before the label of a failing check; without letters where there is one plan. */
  warning: (letters: string) => (letters === '' ? wording`Warning:` : wording`Warning, plan ${letters}:`),
  firstOnly: wording`Show the first only`,
  moreWarnings: (count: number) => wording`and ${count} more warnings`,
} as const;
