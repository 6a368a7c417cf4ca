import { wording } from '../../language/wording';

/** Fixed texts of the list of drivers. */
export const driversTexts = {
  apart: wording`show the shares as if drawn apart`,
  aloneKey: wording`alone: the share of the spread that goes away once you know this`,
  withOthersKey: wording`with others: the share that stays open as long as you do not`,
  caption: wording`Which guesses drive the spread`,
  share: (which: string) => `${which}, %`,
  error: (which: string) => `${which}: ± %`,
  alone: wording`alone`,
  withOthers: wording`with others`,
  fewer: wording`Leave out those below 1 %`,
  /** @param hidden how many */
  more: (hidden: number) => wording`Show ${hidden} more, below 1 % each`,
} as const;
