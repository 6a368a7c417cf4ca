import { wording } from '../../language/wording';
import type { Chapter } from './entry';

export const budget: Chapter = {
  heading: wording`The case`,
  entries: [
    {
      id: 'partial budget',
      what: wording`Partial budget`,
      how: wording`The entries that the model’s budget column marks, in the plan that is taken less in the one that is given up. Each change stands once, in one of four parts: returns that rise or fall, costs that fall or rise. What is the same in both plans is left out. In amounts each line is rounded by itself to the currency’s minor unit; the sums are of exact numbers, and where the two part it is said.`,
      formulas: [
        wording`*net change* = (added returns + reduced costs) − (added costs + reduced returns)`,
        wording`*net change* = (Σ returns − Σ costs)_{B} − (Σ returns − Σ costs)_{A}`,
      ],
      design: wording`How often it pays is counted in at most 100,000 draws, with the start number of How sure; where it turns is searched as a switching value is, of the net change itself.`,
      source: wording`NDSU, Introduction to Partial Budgeting; NMSU Guide Z-123 (2021).`,
      limits: wording`One usual year: the value of time, what is paid once, and the way to get there are not in it, unless an entry spreads them over the years. Fixed costs that do not change are left out, so it says nothing of whether the farm as a whole pays.`,
      where: wording`The case.`,
    },
    {
      id: 'over years',
      what: wording`Money over the years`,
      how: wording`The outlay is paid today, the net change of the partial budget comes at the end of each year, what is still worth something at the end of the last. Each is brought to today by its discount factor. Payback is when the sums so far have paid the outlay, with interest (discounted) and without (simple); within that year the gain is taken to come evenly, and what is left at the end does not count. The annual equivalent is the same amount each year that is worth as much.`,
      formulas: [
        wording`discount factor of the end of year *t*: (1 + *r*)^{−t}`,
        wording`*net present value* = −*outlay* + Σ_{t=1…n} *gain* × (1 + *r*)^{−t} + *left* × (1 + *r*)^{−n}`,
        wording`*annual equivalent* = *net present value* × *r* / (1 − (1 + *r*)^{−n}), or ÷ *n* without interest`,
        wording`*internal rate*: the *r* at which the *net present value* is 0`,
        wording`it is worth more than it costs where *gain* > (*outlay* − *left* × (1 + *r*)^{−n}) × *r* / (1 − (1 + *r*)^{−n})`,
      ],
      design: wording`Exact numbers; the internal rate to 15 digits, and only where money turns round once, so that there is just one (Descartes’ rule of signs). The odds are counted in the draws of the net change that the case has made: with a certain outlay it is enough to count those above the gain that is needed. An outlay with a range is drawn beside them, triangular about itself, apart from all entries and with the same start number.`,
      source: wording`Newnan, Engineering Economic Analysis; checked against its printed tables of factors, numpy-financial for internal rates, and a published payback of a transplanting machine (Scientia Horticulturae, 2019).`,
      limits: wording`Every year is like the first: no growth, no prices that rise, no tax, no loan with terms of its own. Interest and gain are both with inflation or both without. An outlay without a range is taken as certain, and one with a range does not move together with any entry.`,
      where: wording`The case.`,
    },
    {
      id: 'enterprise budget',
      what: wording`Enterprise budget`,
      how: wording`All lines of the budget in one plan. A cost is variable where it changes when every count of plants a year or a week, of those sown and moved as well as those sold, is one per cent higher and the rest is worked out anew; else it is fixed, unless a person counts the line otherwise. So are returns told from those that do not hang on plants.`,
      formulas: [
        wording`*margin over variable costs* = Σ returns − Σ variable costs; *margin* = that − Σ fixed costs`,
        wording`*breakeven price* = (fixed costs − other returns) / *plants* + variable costs of a plant`,
        wording`*breakeven plants* = (fixed costs − other returns) / (price of a plant − variable costs of a plant)`,
      ],
      source: wording`University of Georgia (Smith), Estimating Cost of Production and Breakeven Prices; UNL CAP 23-0602 (2023); checked against breakeven prices of Washington State University and a budget of Rutgers Cooperative Extension.`,
      limits: wording`Variable costs and returns are taken to rise straight with the plants, at the average price of today: a market that takes only so many, or staff with hours to spare, bends that line. What is fixed for a few plants more may not be for many.`,
      where: wording`Plans.`,
    },
  ],
};
