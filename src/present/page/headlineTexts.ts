/** Texts around the headlines, and of checks that do not hold. */
export const headlineTexts = {
  heading: 'Headlines',
  /** For screen readers, before the change since the last edit; the style sheet inserts it. */
  changedBy: ', changed by ',
  /** Before the label of a failing check; without letters where there is one plan. */
  warning: (letters: string) => (letters === '' ? 'Warning:' : `Warning, plan ${letters}:`),
  firstOnly: 'Show the first only',
  moreWarnings: (count: number) => `and ${count} more warnings`,
} as const;
