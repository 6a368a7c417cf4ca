import { wording } from '../../language/wording';
import type { Chapter } from './entry';

export const drawsChapter: Chapter = {
  heading: wording`Draws`,
  entries: [
    {
      id: 'draws',
      what: wording`Draws`,
      how: wording`Every entry with a range is drawn by its shape, all at once, and the result is worked out for each draw. An entry that both plans share is drawn once for both. Each entry has its own stream of random numbers, known by the seed and the entry, so the same seed gives the same draws on any machine.`,
      formulas: [wording`*x* = *Q*(*u*), *u* even between 0 and 1, *Q* the quantile of the shape`],
      design: wording`100,000 draws unless told otherwise, up to 10,000,000. Plain Monte Carlo. Chances are odd multiples of 2⁻⁵³. Start number 0 is one like any other.`,
      source: wording`xoshiro128** 1.1: Blackman & Vigna, ACM Transactions on Mathematical Software 47 (2021) 36; seeding by splitmix64: Steele, Lea & Flood, OOPSLA 2014.`,
      limits: wording`The draws are as good as the ranges: an entry without a range counts as certain. The numbers are float64. Draws that cannot be computed are counted and left out; the first 100 of them are looked into for the reason.`,
      where: wording`How sure.`,
    },
    {
      id: 'shapes',
      what: wording`Shapes of a range`,
      how: wording`Triangular and PERT rise to today’s number and fall to the ends. Uniform: any number alike. Either: low or high, as likely. Normal and lognormal: low and high are the 5th and 95th percentile, and draws go beyond. The last four take no notice of today’s number, and the screen says where they are spread round another.`,
      formulas: [
        wording`triangular: mean (*low* + *mode* + *high*) / 3`,
        wording`PERT: a beta with shapes 1 + 4 (*mode* − *low*) / *span* and 1 + 4 (*high* − *mode*) / *span*`,
        wording`normal: mean (*low* + *high*) / 2, standard deviation (*high* − *low*) / 3.2897; lognormal: the same of the logarithms`,
      ],
      source: wording`Kotz & van Dorp, Beyond Beta (2004); PERT: Malcolm and others, Operations Research 7 (1959) 646–669, with the exact variance; normal quantile: Wichura, Applied Statistics 37 (1988) 477–484.`,
      limits: wording`Shares drawn below 0 or above 100 % are counted and said, not cut off.`,
      where: wording`How sure.`,
    },
    {
      id: 'together',
      what: wording`Entries drawn together`,
      how: wording`Rank correlations are made with correlated normal numbers, each turned into its chance and that into the value of the entry that has this chance.`,
      formulas: [wording`*r* = 2 sin(π*ρ* / 6), the normal correlation for a rank correlation *ρ*`],
      source: wording`Clemen & Reilly, Management Science 45 (1999) 208–224; the sine: Pearson 1907.`,
      limits: wording`A correlation says how two entries rise together on the whole, not what they do in their extremes.`,
      where: wording`How sure.`,
    },
    {
      id: 'plan odds',
      what: wording`The best of all plans, in draws`,
      how: wording`In a model with more than two plans the result is worked out in every plan for each draw, and the plan with the lowest of a cost, or the highest of anything else, wins the draw. A draw in which several are alike is shared out evenly among them.`,
      formulas: [wording`share of plan *p* = draws that it wins / draws that count`],
      design: wording`The same start number gives the same draws as a comparison of two plans.`,
      source: wording`Counting.`,
      limits: wording`A plan that wins often may still do badly where it loses: its mean and its spread tell of that. Draws that cannot be computed in every plan are left out and counted.`,
      where: wording`How sure.`,
    },
    {
      id: 'mean',
      what: wording`Mean and its error`,
      how: wording`The sum of the results divided by their number. Its standard error tells what more draws would settle.`,
      formulas: [wording`error = *sd* / √*n*, with *sd*² = Σ (*x* − mean)² / (*n* − 1)`],
      source: wording`Two passes, the second corrected: Chan, Golub & LeVeque, The American Statistician 37 (1983) 242–247; sums in pairs: Higham, SIAM Journal on Scientific Computing 14 (1993) 783–799.`,
      limits: wording`It does not tell what better ranges would settle.`,
      where: wording`How sure.`,
    },
    {
      id: 'percentiles',
      what: wording`Percentiles and the picture`,
      how: wording`The results in order; between two neighbours in proportion. The picture has bins of 1, 2 or 5 times a power of ten.`,
      formulas: [wording`at the place 1 + (*n* − 1) *p* of the ordered results (definition 7)`],
      design: wording`About 60 bins, common to both plans; half a per cent of the draws at either end may lie beyond the picture.`,
      source: wording`Hyndman & Fan, The American Statistician 50 (1996) 361–365.`,
      limits: wording`With few draws the outer percentiles are rough.`,
      where: wording`How sure.`,
    },
  ],
};
