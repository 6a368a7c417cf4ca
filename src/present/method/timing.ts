import type { Chapter } from './entry';

export const timing: Chapter = {
  heading: 'Timing the work',
  entries: [
    {
      id: 'timed mean',
      what: 'Seconds for a plant, from batches',
      how: 'The seconds of each batch are brought to a normal pace by its rating; then all seconds are divided by all plants. So each plant counts alike, and a batch of ten does not weigh as much as one of a hundred.',
      formulas: [
        'rated seconds of a batch: *y* = seconds × rating / 100',
        'seconds for a plant: *R* = Σ *y* / Σ *x*, *x* the plants of each batch',
      ],
      source:
        'W. G. Cochran, Sampling Techniques, 3rd edition, chapter 6 (ratio estimator); International Labour Office, Introduction to Work Study, on rating, from memory.',
      limits:
        'A rating is a judgement: two observers differ by several per cent. The ratio is slightly biased with few batches of very unequal size. What was timed says nothing of other people, crops or days than those timed.',
      where: 'Timing; the command time.',
    },
    {
      id: 'timed interval',
      what: 'How sure the seconds are',
      how: 'How far each batch lies from what its plants would take at the mean gives the standard error of the ratio; Student’s t for one batch fewer than there are makes an interval of it. Where all batches have the same number of plants it is the usual interval of a mean.',
      formulas: [
        '*SE*^{2} = Σ (*y* − *R* *x*)^{2} / (*n* (*n* − 1) *x̄*^{2})',
        'from *R* − *t* *SE* to *R* + *t* *SE*; *t* of Student with *n* − 1 degrees of freedom',
      ],
      design: 't is found by Newton’s method on the incomplete beta function, to 12 digits.',
      source:
        'Cochran, Sampling Techniques, 3rd edition, chapter 6, without a finite population; Abramowitz & Stegun 26.7.1 and NIST Digital Library of Mathematical Functions 8.17.22 for t.',
      limits:
        'It takes the batches as independent and picked without choosing. Batches of one worker on one morning are more alike than that, and the true interval is wider. With two or three batches it is so wide that it says little, and may reach below 0. One batch has none.',
      where: 'Timing; the command time.',
    },
    {
      id: 'batches needed',
      what: 'How many batches to time',
      how: 'As many as bring the interval within the per cent asked for, if the next batches scatter as those so far.',
      formulas: [
        '*N* = ⌈(*z* *SE* √*n* / (*w* *R*))^{2}⌉; *w* the share either way, *z* of the normal distribution at the confidence',
      ],
      source:
        'The usual sample size for a mean (International Labour Office, Introduction to Work Study, from memory), with the ratio’s standard error.',
      limits:
        'It uses z, as is usual for a plan, where the interval itself uses t: with few batches the interval can still be wider than asked when as many as this are timed. The spread of a few batches is a poor guide; ask again after each batch. Batches that agree exactly tell nothing of it.',
      where: 'Timing; the command time.',
    },
  ],
};
