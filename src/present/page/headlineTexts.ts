/** What the headlines say around their numbers, and of checks that do not hold. */
export const headlineTexts = {
  heading: 'Headlines',
  /** Heard before the change since the last edit, where a style sets it. */
  changedBy: ', changed by ',
  /** Before the label of a check; without letters where there is one plan. */
  warning: (letters: string) => (letters === '' ? 'Warning:' : `Warning, plan ${letters}:`),
  firstOnly: 'Show the first only',
  moreWarnings: (count: number) => `and ${count} more warnings`,
} as const;
