import type { Chapter } from './entry';

export const drawsChapter: Chapter = {
  heading: 'Draws',
  entries: [
    {
      id: 'draws',
      what: 'Draws',
      how: 'Every entry with a range is drawn by its shape, all at once, and the result is worked out for each draw. An entry that both plans share is drawn once for both. Each entry has its own stream of random numbers, known by the seed and the entry, so the same seed gives the same draws on any machine.',
      formulas: ['*x* = *Q*(*u*), *u* even between 0 and 1, *Q* the quantile of the shape'],
      design:
        '100,000 draws unless told otherwise, up to 10,000,000. Plain Monte Carlo. Chances are odd multiples of 2⁻⁵³. Start number 0 is one like any other.',
      source:
        'xoshiro128** 1.1: Blackman & Vigna, ACM Transactions on Mathematical Software 47 (2021) 36; seeding by splitmix64: Steele, Lea & Flood, OOPSLA 2014.',
      limits:
        'The draws are as good as the ranges: an entry without a range counts as certain. The numbers are float64. Draws that cannot be computed are counted and left out; the first 100 of them are looked into for the reason.',
      where: 'How sure.',
    },
    {
      id: 'shapes',
      what: 'Shapes of a range',
      how: 'Triangular and PERT rise to today’s number and fall to the ends. Uniform: any number alike. Either: low or high, as likely. Normal and lognormal: low and high are the 5th and 95th percentile, and draws go beyond. The last four take no notice of today’s number, and the screen says where they are spread round another.',
      formulas: [
        'triangular: mean (*low* + *mode* + *high*) / 3',
        'PERT: a beta with shapes 1 + 4 (*mode* − *low*) / *span* and 1 + 4 (*high* − *mode*) / *span*',
        'normal: mean (*low* + *high*) / 2, standard deviation (*high* − *low*) / 3.2897; lognormal: the same of the logarithms',
      ],
      source:
        'Kotz & van Dorp, Beyond Beta (2004); PERT: Malcolm and others, Operations Research 7 (1959) 646–669, with the exact variance; normal quantile: Wichura, Applied Statistics 37 (1988) 477–484.',
      limits: 'Shares drawn below 0 or above 100 % are counted and said, not cut off.',
      where: 'How sure.',
    },
    {
      id: 'together',
      what: 'Entries drawn together',
      how: 'Rank correlations are made with correlated normal numbers, each turned into its chance and that into the value of the entry that has this chance.',
      formulas: ['*r* = 2 sin(π*ρ* / 6), the normal correlation for a rank correlation *ρ*'],
      source: 'Clemen & Reilly, Management Science 45 (1999) 208–224; the sine: Pearson 1907.',
      limits: 'A correlation says how two entries rise together on the whole, not what they do in their extremes.',
      where: 'How sure.',
    },
    {
      id: 'plan odds',
      what: 'The best of all plans, in draws',
      how: 'In a model with more than two plans the result is worked out in every plan for each draw, and the plan with the lowest of a cost, or the highest of anything else, wins the draw. A draw in which several are alike is shared out evenly among them.',
      formulas: ['share of plan *p* = draws that it wins / draws that count'],
      design: 'The same start number gives the same draws as a comparison of two plans.',
      source: 'Counting.',
      limits:
        'A plan that wins often may still do badly where it loses: its mean and its spread tell of that. Draws that cannot be computed in every plan are left out and counted.',
      where: 'How sure.',
    },
    {
      id: 'mean',
      what: 'Mean and its error',
      how: 'The sum of the results divided by their number. Its standard error tells what more draws would settle.',
      formulas: ['error = *sd* / √*n*, with *sd*² = Σ (*x* − mean)² / (*n* − 1)'],
      source:
        'Two passes, the second corrected: Chan, Golub & LeVeque, The American Statistician 37 (1983) 242–247; sums in pairs: Higham, SIAM Journal on Scientific Computing 14 (1993) 783–799.',
      limits: 'It does not tell what better ranges would settle.',
      where: 'How sure.',
    },
    {
      id: 'percentiles',
      what: 'Percentiles and the picture',
      how: 'The results in order; between two neighbours in proportion. The picture has bins of 1, 2 or 5 times a power of ten.',
      formulas: ['at the place 1 + (*n* − 1) *p* of the ordered results (definition 7)'],
      design:
        'About 60 bins, common to both plans; half a per cent of the draws at either end may lie beyond the picture.',
      source: 'Hyndman & Fan, The American Statistician 50 (1996) 361–365.',
      limits: 'With few draws the outer percentiles are rough.',
      where: 'How sure.',
    },
  ],
};
