/** Fixed texts of the list of drivers. */
export const driversTexts = {
  apart: 'show the shares as if drawn apart',
  aloneKey: 'alone: the share of the spread that goes away once you know this',
  withOthersKey: 'with others: the share that stays open as long as you do not',
  caption: 'Which guesses drive the spread',
  share: (which: string) => `${which}, %`,
  error: (which: string) => `${which}: ± %`,
  alone: 'alone',
  withOthers: 'with others',
  fewer: 'Leave out those below 1 %',
  /** @param hidden how many */
  more: (hidden: number) => `Show ${hidden} more, below 1 % each`,
} as const;
