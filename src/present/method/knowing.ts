import { wording } from '../../language/wording';
import type { Chapter } from './entry';

export const knowing: Chapter = {
  heading: wording`What drives it, and what is worth finding out`,
  entries: [
    {
      id: 'indices',
      what: wording`What drives the spread`,
      how: wording`Alone (first-order index): the share of the spread that goes away once the entry is known. With others (total index): the share that stays open as long as it is not. Spread is counted as variance.`,
      formulas: [
        wording`alone: *S*_{i} = mean[ *f*(B) (*f*(A_{i}) − *f*(A)) ] / variance`,
        wording`with others: *T*_{i} = mean[ (*f*(A_{i}) − *f*(A))² ] / (2 × variance)`,
      ],
      design: wording`A and B are two sets of scrambled Sobol’ points, A with entry i from B is Aᵢ; f(B) is counted from its mean. 16 sets scrambled apart, whose scatter gives the errors. Points in all: the power of two nearest above a 16th of the draws, from 512 to 65,536; entries + 2 runs for each.`,
      source: wording`Saltelli and others, Computer Physics Communications 181 (2010) 259–270, table 2 (b) and (f); Jansen, Computer Physics Communications 117 (1999) 35–43. Points: Joe & Kuo, SIAM Journal on Scientific Computing 30 (2008) 2635–2654; scrambling: Matoušek, Journal of Complexity 14 (1998) 527–556.`,
      limits: wording`Only for entries drawn apart. Where the file ties entries together, the shares are shown only as if it did not, and say so. An estimate may lie a little below 0 or above 100 %, within its error. It says nothing of which entry makes the tails.`,
      where: wording`What matters and How sure.`,
    },
    {
      id: 'knowing all',
      what: wording`Worth of knowing everything`,
      how: wording`In each draw the better of the two options (go ahead where the result is above the target, or do not), on average, less the option that is better on average.`,
      formulas: [wording`*V* = mean[ max(0, *d*) ] − max(0, mean[*d*]), *d* the result less the target`],
      source: wording`Raiffa & Schlaifer, Applied Statistical Decision Theory (1961), chapter 4.`,
      limits: wording`An upper limit: no trial tells everything. It counts what is in the result alone, for one who minds only the average. It is the same whether more or less of the result is better.`,
      where: wording`How sure.`,
    },
    {
      id: 'knowing one',
      what: wording`Worth of knowing one entry`,
      how: wording`On half of the draws the result is fitted as a polynomial of the chance at which the entry was drawn; this says for which values to go ahead. The gain of that rule is measured on the other half, and the other way round.`,
      formulas: ['*V*_{i} = E[ max(0, E[*d* | *x*_{i}]) ] − max(0, E[*d*])'],
      design: wording`Up to 128 bins of equal chance with at least 64 draws each (2 for a range of two values), a polynomial of degree 8 at most, two halves.`,
      source: wording`After Strong, Oakley & Brennan, Medical Decision Making 34 (2014) 311–326; degree by Mallows’ Cp, Technometrics 15 (1973) 661–675; fit: Forsythe, Journal of SIAM 5 (1957) 74–88.`,
      limits: wording`It errs low, by what the fitted rule loses against the best one. A worth within two standard errors of 0 is told as none. Entries may be tied: it counts what the one tells of the others.`,
      where: wording`How sure.`,
    },
  ],
};
