import { wording } from '../../../language/wording';

/** Words round what an outlay brings over the years. */
export const yearsTexts = {
  invite: wording`Boards, holders, the training of a hire: give what the change costs once, and see when the yearly gain has paid it back.`,
  source: wording`The outlay is`,
  sources: { typed: wording`an amount typed here`, entries: wording`entries of this model` },
  outlay: wording`Outlay, paid once`,
  low: wording`It may come to at least`,
  high: wording`at most`,
  certain: wording`Take the outlay as certain`,
  halfRange: wording`half a range of the outlay: give both, at least and at most. Until then the odds take it as certain.`,
  turnedRange: (low: string, high: string) =>
    wording`no range of the outlay, as at least is not below at most: ${low} and ${high}. Swap them; until then the odds take it as certain.`,
  outsideRange: (outlay: string, low: string, high: string) =>
    wording`outlay outside its range from ${low} to ${high}: ${outlay}. Widen the range; until then the odds take it as certain.`,
  takenAsItStands: wording`The outlay is taken as it stands today, though it hangs on entries with a range: give it one, at least and at most.`,
  entries: wording`What of these is bought? B − A counts.`,
  years: wording`Years looked at`,
  rate: wording`Interest`,
  rateUnit: wording`% a year`,
  left: wording`Still worth at the end`,
  none: wording`Leave the outlay out`,
  /** @param text a rate in % as it was typed */
  refusedRate: (text: string) =>
    wording`no rate above −100 % a year: ${text}. At such a rate money that comes later has no worth today.`,
  picture: (unit: string) => wording`Worth today of all that has come and gone so far, ${unit}`,
  withInterest: wording`with interest`,
  withoutInterest: wording`without interest`,
  yearsAcross: wording`years from today`,
  tableRegion: wording`The outlay year by year`,
  caption: (unit: string) => wording`Year by year, in ${unit}`,
  heads: {
    year: wording`year`,
    what: wording`what moves`,
    amount: wording`amount`,
    factor: wording`discount factor`,
    present: wording`worth today`,
    cumulative: wording`so far`,
  },
  whats: { outlay: wording`outlay`, gain: wording`gain of the year`, left: wording`what is left` },
  /** A part of a year. */
  within: wording`Within a year the gain is taken to come evenly; the years are counted from the day the outlay is paid.`,
  belowZero: wording`At a rate below 0 money that comes later counts for more than money today.`,
  unknownGain: wording`What the change brings a year cannot be computed today, and so neither can what the outlay brings over the years.`,
  unknownOutlay: wording`One of the entries that are bought has no value in one of the plans, so the outlay is not known.`,
} as const;
