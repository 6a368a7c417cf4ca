/** An estimator in words. */
export interface Method {
  readonly what: string;
  readonly how: string;
  readonly source: string;
  readonly limits: string;
}

/** Every estimator that this screen and the switching values use. */
export const methods: readonly Method[] = [
  {
    what: 'Draws',
    how: 'Every entry with a range is drawn by its shape, all at once, and the result is worked out for each draw. An entry that both plans share is drawn once for both. Each entry has its own stream of random numbers, known by the seed and the entry, so the same seed gives the same draws on any machine.',
    source: 'xoshiro128** 1.1: Blackman & Vigna, ACM Transactions on Mathematical Software 47 (2021) 36; seeding by splitmix64: Steele, Lea & Flood, OOPSLA 2014.',
    limits: 'The draws are as good as the ranges: an entry without a range counts as certain. The numbers are float64.',
  },
  {
    what: 'Entries drawn together',
    how: 'Rank correlations are made with correlated normal numbers, each turned into its chance and that into the value of the entry that has this chance.',
    source: 'Clemen & Reilly, Management Science 45 (1999) 208–224.',
    limits: 'A correlation says how two entries rise together on the whole, not what they do in their extremes.',
  },
  {
    what: 'Mean and its error',
    how: 'The sum of the results divided by their number. Its standard error is the standard deviation (with n − 1) divided by the root of the number of draws.',
    source: 'Two passes, the second corrected: Chan, Golub & LeVeque, The American Statistician 37 (1983) 242–247.',
    limits: 'The error tells what more draws would settle, not what better ranges would.',
  },
  {
    what: 'Percentiles',
    how: 'The results in order; between two neighbours in proportion (definition 7).',
    source: 'Hyndman & Fan, The American Statistician 50 (1996) 361–365.',
    limits: 'With few draws the outer percentiles are rough.',
  },
  {
    what: 'What drives the spread',
    how: 'Alone (first-order index): the variance of what the result is expected to be once the entry is known, as a share of the whole variance. With others (total index): the share of the variance that is left once all other entries are known. Both from scrambled Sobol’ points in two sets, and each set with one entry taken from the other; errors from 16 sets scrambled apart.',
    source: 'Saltelli and others, Computer Physics Communications 181 (2010) 259–270; Jansen, Computer Physics Communications 117 (1999) 35–43.',
    limits: 'Entries must be drawn independently. An estimate may lie a little below 0 or above 100 %, within its error. Draws that cannot be computed are left out. Spread is counted as variance: it says nothing of which entry makes the tails.',
  },
  {
    what: 'Worth of knowing everything',
    how: 'In each draw the better of the two options (go ahead where the result is above the target, or do not), on average, less the option that is better on average.',
    source: 'Raiffa & Schlaifer, Applied Statistical Decision Theory (1961), chapter 4.',
    limits: 'An upper limit: no trial tells everything. It counts what is in the result alone, for one who minds only the average. It is the same whether more or less of the result is better.',
  },
  {
    what: 'Worth of knowing one entry',
    how: 'On half of the draws the result is fitted as a polynomial of the chance at which the entry was drawn; this says for which values to go ahead. The gain of that rule is measured on the other half, and the other way round.',
    source: 'After Strong, Oakley & Brennan, Medical Decision Making 34 (2014) 311–326; degree by Mallows’ Cp.',
    limits: 'It errs low, by what the fitted rule loses against the best one. A worth within two standard errors of 0 is told as none.',
  },
  {
    what: 'Switching values',
    how: 'For each entry the value nearest to today’s at which the result crosses the target, everything else as it stands, found by search over ten times its range, or from a hundredth to a hundred times today’s number where it has none.',
    source: 'Asian Development Bank, Financial Management and Analysis of Projects, 7.11, whose reciprocal rule holds for straight lines only.',
    limits: 'One entry at a time. At least 1,000 values are looked at; crossings closer together may be missed.',
  },
];
