/** Words round what an outlay brings over the years. */
export const yearsTexts = {
  invite:
    'Boards, holders, the training of a hire: give what the change costs once, and see when the yearly gain has paid it back.',
  source: 'The outlay is',
  sources: { typed: 'an amount typed here', entries: 'entries of this model' },
  outlay: 'Outlay, paid once',
  low: 'It may come to at least',
  high: 'at most',
  certain: 'Take the outlay as certain',
  halfRange: 'half a range of the outlay: give both, at least and at most. Until then the odds take it as certain.',
  turnedRange: (low: string, high: string) =>
    `no range of the outlay, as at least is not below at most: ${low} and ${high}. Swap them; until then the odds take it as certain.`,
  outsideRange: (outlay: string, low: string, high: string) =>
    `outlay outside its range from ${low} to ${high}: ${outlay}. Widen the range; until then the odds take it as certain.`,
  takenAsItStands:
    'The outlay is taken as it stands today, though it hangs on entries with a range: give it one, at least and at most.',
  entries: 'What of these is bought? B − A counts.',
  years: 'Years looked at',
  rate: 'Interest',
  rateUnit: '% a year',
  left: 'Still worth at the end',
  none: 'Leave the outlay out',
  /** @param text a rate in % as it was typed */
  refusedRate: (text: string) =>
    `no rate above −100 % a year: ${text}. At such a rate money that comes later has no worth today.`,
  picture: (unit: string) => `Worth today of all that has come and gone so far, ${unit}`,
  withInterest: 'with interest',
  withoutInterest: 'without interest',
  yearsAcross: 'years from today',
  tableRegion: 'The outlay year by year',
  caption: (unit: string) => `Year by year, in ${unit}`,
  heads: {
    year: 'year',
    what: 'what moves',
    amount: 'amount',
    factor: 'discount factor',
    present: 'worth today',
    cumulative: 'so far',
  },
  whats: { outlay: 'outlay', gain: 'gain of the year', left: 'what is left' },
  /** A part of a year. */
  within: 'Within a year the gain is taken to come evenly; the years are counted from the day the outlay is paid.',
  belowZero: 'At a rate below 0 money that comes later counts for more than money today.',
  unknownGain:
    'What the change brings a year cannot be computed today, and so neither can what the outlay brings over the years.',
  unknownOutlay: 'One of the entries that are bought has no value in one of the plans, so the outlay is not known.',
} as const;
