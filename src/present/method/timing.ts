import { wording } from '../../language/wording';
import type { Chapter } from './entry';

export const timing: Chapter = {
  heading: wording`Timing the work`,
  entries: [
    {
      id: 'timed mean',
      what: wording`Seconds for a plant, from batches`,
      how: wording`The seconds of each batch are brought to a normal pace by its rating; then all seconds are divided by all plants. So each plant counts alike, and a batch of ten does not weigh as much as one of a hundred.`,
      formulas: [
        wording`rated seconds of a batch: *y* = seconds × rating / 100`,
        wording`seconds for a plant: *R* = Σ *y* / Σ *x*, *x* the plants of each batch`,
      ],
      source: wording`W. G. Cochran, Sampling Techniques, 3rd edition, chapter 6 (ratio estimator); International Labour Office, Introduction to Work Study, on rating, from memory.`,
      limits: wording`A rating is a judgement: two observers differ by several per cent. The ratio is slightly biased with few batches of very unequal size. What was timed says nothing of other people, crops or days than those timed.`,
      where: wording`Timing; the command time.`,
    },
    {
      id: 'timed interval',
      what: wording`How sure the seconds are`,
      how: wording`How far each batch lies from what its plants would take at the mean gives the standard error of the ratio; Student’s t for one batch fewer than there are makes an interval of it. Where all batches have the same number of plants it is the usual interval of a mean.`,
      formulas: [
        '*SE*^{2} = Σ (*y* − *R* *x*)^{2} / (*n* (*n* − 1) *x̄*^{2})',
        wording`from *R* − *t* *SE* to *R* + *t* *SE*; *t* of Student with *n* − 1 degrees of freedom`,
      ],
      design: wording`t is found by Newton’s method on the incomplete beta function, to 12 digits.`,
      source: wording`Cochran, Sampling Techniques, 3rd edition, chapter 6, without a finite population; Abramowitz & Stegun 26.7.1 and NIST Digital Library of Mathematical Functions 8.17.22 for t.`,
      limits: wording`It takes the batches as independent and picked without choosing. Batches of one worker on one morning are more alike than that, and the true interval is wider. With two or three batches it is so wide that it says little, and may reach below 0. One batch has none.`,
      where: wording`Timing; the command time.`,
    },
    {
      id: 'batches needed',
      what: wording`How many batches to time`,
      how: wording`As many as bring the interval within the per cent asked for, if the next batches scatter as those so far.`,
      formulas: [
        wording`*N* = ⌈(*z* *SE* √*n* / (*w* *R*))^{2}⌉; *w* the share either way, *z* of the normal distribution at the confidence`,
      ],
      source: wording`The usual sample size for a mean (International Labour Office, Introduction to Work Study, from memory), with the ratio’s standard error.`,
      limits: wording`It uses z, as is usual for a plan, where the interval itself uses t: with few batches the interval can still be wider than asked when as many as this are timed. The spread of a few batches is a poor guide; ask again after each batch. Batches that agree exactly tell nothing of it.`,
      where: wording`Timing; the command time.`,
    },
    {
      id: 'ways compared',
      what: wording`Two ways of working compared`,
      how: wording`Each way has its own seconds for a plant and its own standard error, as above. Welch’s t, which does not take both ways to vary alike, makes an interval of their difference; the same on the logarithm makes one of their ratio. Where the interval of the difference has 0 in it, the batches do not tell which way is quicker. What the difference is worth is asked of the model: its result with the seconds of the slower way in the entry, and with those less the difference.`,
      formulas: [
        wording`*D* = *R*_{1} − *R*_{2}, from *D* − *t* √(*SE*_{1}^{2} + *SE*_{2}^{2}) to *D* + *t* √(*SE*_{1}^{2} + *SE*_{2}^{2})`,
        wording`degrees of freedom of *t*: (*v*_{1} + *v*_{2})^{2} / (*v*_{1}^{2}/(*n*_{1} − 1) + *v*_{2}^{2}/(*n*_{2} − 1)), *v* = *SE*^{2}`,
        wording`batches of each way for a plan: (*z* + 0.8416)^{2} (*σ*_{1}^{2} + *σ*_{2}^{2}) / *D*^{2}, *σ*^{2} = *n* *SE*^{2}`,
      ],
      source: wording`B. L. Welch, Biometrika 34 (1947); F. E. Satterthwaite, Biometrics Bulletin 2 (1946); the number of batches as in B. Rosner, Fundamentals of Biostatistics, for equal groups and a chance of 80 %, from memory.`,
      limits: wording`It takes batches as independent. Two ways timed by different people, on different days or one after the other differ in these too. One batch of a way gives no interval. The number of batches takes the difference seen for the true one, which a few batches do not tell well.`,
      where: wording`Timing.`,
    },
    {
      id: 'learning curve',
      what: wording`Whether the work gets quicker`,
      how: wording`In the unit model each doubling of the plants done brings the seconds of a plant to the same share. The curve is fitted by least squares to the logarithms of each batch’s seconds for a plant, over the logarithm of the plant in its middle, counted from the first. It is shown where the interval of its slope lies below 0; else no learning shows. A batch that was left out counts as plants done and is not fitted.`,
      formulas: [
        wording`seconds of the n-th plant: *T*_{1} *n*^{b}; share with each doubling: 2^{b}`,
        wording`interval of *b*: *b* ± *t* *s* / √(Σ (*x* − *x̄*)^{2}), *x* = log *n*, *t* with two degrees of freedom fewer than batches`,
      ],
      source: wording`Unit model of J. R. Crawford, as in the learning curve tables of operations management (W. J. Stevenson, Operations Management); N. R. Draper & H. Smith, Applied Regression Analysis, chapter 1, for the intervals, from memory.`,
      limits: wording`The model of T. P. Wright, whose average falls and not its unit, gives other seconds for the same share: do not mix them. The first batch timed is seldom the first plant of a life, people differ, and learning ends somewhere: a curve drawn on far beyond the batches tells little.`,
      where: wording`Timing.`,
    },
    {
      id: 'lost share',
      what: wording`How sure the lost share is`,
      how: wording`Plants lost or culled over plants, in the batches whose losses were counted. The score interval stays within 0 and 100 %, and says something where nothing was lost.`,
      formulas: ['(*x* + *z*^{2}/2 ± *z* √(*x* (*n* − *x*)/*n* + *z*^{2}/4)) / (*n* + *z*^{2})'],
      source: wording`E. B. Wilson, Journal of the American Statistical Association 22 (1927), without a correction for continuity; R. G. Newcombe, Statistics in Medicine 17 (1998).`,
      limits: wording`It takes plants as lost one by one. Plants of one batch live and die together, so that the true interval is wider. A batch whose losses nobody counted tells nothing.`,
      where: wording`Timing.`,
    },
    {
      id: 'odd batches',
      what: wording`When a batch is odd`,
      how: wording`A batch is flagged where its seconds for a plant lie far from the middle one, measured by the middle distance from it, which one odd batch cannot move. It counts until a person leaves it out, and a batch that is left out says why and comes back.`,
      formulas: [
        wording`score 0.6745 (*x* − median) / MAD, odd beyond 3.5 either way; MAD the median of |*x* − median|`,
      ],
      source: wording`B. Iglewicz & D. C. Hoaglin, How to Detect and Handle Outliers, 1993.`,
      limits: wording`Not asked of fewer than five batches, and without an answer where over half of them agree. An odd batch may be the one that shows what goes wrong: look before leaving it out.`,
      where: wording`Timing.`,
    },
  ],
};
