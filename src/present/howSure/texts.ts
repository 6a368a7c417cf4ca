import { wording, wordingOf } from '../../language/wording';
import { say, type Phrase } from '../text/phrase';

/** The headings of How sure, and its settings. */
export const howSureTexts = {
  chooser: wording`How sure is`,
  above: wording`above`,
  draws: wording`draws`,
  startNumber: wording`start number`,
  drawAs: wording`draw it as`,
  looks: { histogram: wording`how often`, curve: wording`added up` },
  driversToCome: wording`Still to come: what drives the spread.`,
  nothingToDraw: (result: string): Phrase => say`No entry with a range touches ${result}, so there is nothing to draw.`,
  giveRange: wording`Give an entry that you are not sure of a low and a high: its range then says how far off it may be.`,
  noResults: wording`In none of the draws can it be computed.`,
} as const;

/** The picture of the draws, and its tables. */
export const spreadTexts = {
  shares: { histogram: wording`share of draws`, curve: wording`share of draws below` },
  box: wording`bar on top: half of the draws; line: 90 of 100; stroke: the middle one`,
  figures: wording`Figures of the draws`,
  bins: wording`How often`,
  binFrom: wordingOf('of an interval')`from`,
  binTo: wordingOf('of an interval')`to`,
  binsCaption: wording`Share of the draws in each bin, per cent`,
} as const;

/** What is worth measuring. */
export const worthTexts = {
  heading: wording`What is worth measuring`,
  all: wording`Everything at once`,
  /** @param count entries that are not told one by one */
  rest: (count: number) =>
    count === 1
      ? wording`One other entry is worth nothing by itself, or too little to tell from nothing with this many draws.`
      : wording`${count} other entries are worth nothing by themselves, or too little to tell from nothing with this many draws.`,
} as const;
