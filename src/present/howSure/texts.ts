import { say, type Phrase } from '../text/phrase';

/** The headings of How sure, and its settings. */
export const howSureTexts = {
  chooser: 'How sure is',
  above: 'above',
  draws: 'draws',
  startNumber: 'start number',
  drawAs: 'draw it as',
  looks: { histogram: 'how often', curve: 'added up' },
  driversToCome: 'Still to come: what drives the spread.',
  nothingToDraw: (result: string): Phrase => say`No entry with a range touches ${result}, so there is nothing to draw.`,
  giveRange: 'Give an entry that you are not sure of a low and a high: its range then says how far off it may be.',
  noResults: 'In none of the draws can it be computed.',
} as const;

/** The picture of the draws, and its tables. */
export const spreadTexts = {
  shares: { histogram: 'share of draws', curve: 'share of draws below' },
  box: 'bar on top: half of the draws; line: 90 of 100; stroke: the middle one',
  figures: 'Figures of the draws',
  bins: 'How often',
  binFrom: 'from',
  binTo: 'to',
  binsCaption: 'Share of the draws in each bin, per cent',
} as const;

/** What is worth measuring. */
export const worthTexts = {
  heading: 'What is worth measuring',
  all: 'Everything at once',
  /** @param count entries that are not told one by one */
  rest: (count: number) => `${nothingByItself(count)}, or too little to tell from nothing with this many draws.`,
} as const;

function nothingByItself(count: number): string {
  return count === 1
    ? 'One other entry is worth nothing by itself'
    : `${count} other entries are worth nothing by themselves`;
}
