import type { Chapter } from './entry';

export const oneAtATime: Chapter = {
  heading: 'One or two entries at a time',
  entries: [
    {
      id: 'tornado',
      what: 'Bars from low to high',
      how: 'Each entry with a range, by itself, at its low and at its high, the others as they stand; the longest bar on top. For shapes without ends (normal, lognormal) low and high are the 5th and 95th percentile. An entry that both plans share moves in both.',
      formulas: ['swing = | *f*(high) − *f*(low) |'],
      source: 'Eschenbach, Interfaces 22 (1992) 40–46, from memory.',
      limits:
        'What lies between the ends, and what two entries do together, is not seen. A wide range makes a long bar: it compares guesses, not importance.',
      where: 'What matters.',
    },
    {
      id: 'spider',
      what: 'Per cent for per cent',
      how: 'The result against the change of an entry in per cent of its number today, each line over the entry’s own range only. The slope is the mean over that range. A line bends where equal changes to either side of today do unequal things.',
      formulas: [
        'slope = (*f*(high) − *f*(low)) / (change at high − change at low)',
        'bend at ± *h* %: *f*(+*h*) − *f*(0) beside *f*(−*h*) − *f*(0), *h* as far as the range reaches to both sides',
      ],
      design:
        'The five longest bars; 40 steps a line, 20 to each side of today, and the two places of the bend. A bend below a tenth of its larger side counts as straight.',
      source: 'Eschenbach, Interfaces 22 (1992) 40–46, from memory.',
      limits: 'An entry that is 0 today has no per cent. A jump between two steps is drawn as a steep line.',
      where: 'What matters.',
    },
    {
      id: 'switching',
      what: 'How wrong a guess may be',
      how: 'For each entry the number nearest to today’s at which the result crosses the target, everything else as it stands, and how far that is in per cent of today. The thinnest margin stands first; in The case those do that flip it within their own range. At a jump it flips right behind the number, which “just above” and “just below” say.',
      formulas: ['change = (*x*_{crossing} − *x*_{today}) / *x*_{today} × 100 %'],
      design:
        'Searched to either side of today’s number by ten times as far as that number and the range lie apart, or from a hundredth to a hundred times the number where it has no range, as for breakeven.',
      source:
        'Asian Development Bank, Financial Management and Analysis of Projects, 7.11, whose reciprocal rule holds for straight lines only: here the crossing is searched.',
      limits: 'One entry at a time. “Cannot flip it” speaks of the range looked at.',
      where: 'What matters.',
    },
    {
      id: 'breakeven',
      what: 'Breakeven',
      how: 'Every number of an entry at which the result meets the target, or two plans meet, within a range. Each change of side is closed in on exactly; a line that only touches the target is looked for as well. A change of side across a pole, or across numbers that cannot be computed, is a break and no breakeven.',
      formulas: ['*x* such that *f*(*x*) = target, or *f*_{B}(*x*) = *f*_{A}(*x*)'],
      design:
        'Looked at in float64 at 1,001 places evenly and some 400 by ratio towards 0; each bracket is drawn together to 26 digits, and the shortest number within 18 digits is told.',
      source: 'Chandrupatla, Advances in Engineering Software 28 (1997) 145–149. Touching: golden section.',
      limits: 'Crossings closer together than the places looked at may be missed.',
      where: 'Breakeven.',
    },
    {
      id: 'best plan',
      what: 'The best of all plans, along an input',
      how: 'In a model with more than two plans: which plan has the lowest of a cost, or the highest of anything else, as one entry moves, and where another plan comes to have it. Each pair of plans is searched for where they meet, as for breakeven; between two neighbouring places the best is the same. Plans that are alike are named together.',
      formulas: ['the plans *p* for which *f*_{p}(*x*) is the least of all, or the most'],
      design:
        'The number moves where plan B takes it from; a plan that takes it from the same field moves along, any other stands still. The lines are drawn in float64.',
      source: 'The lower or upper envelope of the lines, by their crossings in pairs.',
      limits: 'As for breakeven: crossings closer together than the places looked at may be missed.',
      where: 'Breakeven.',
    },
    {
      id: 'two at once',
      what: 'Two inputs at once',
      how: 'The result over a grid of both inputs, and the line along which it meets the target, taken as straight between neighbouring nodes.',
      design: 'A coarse grid of 16 × 16 first, then 60 × 60, in float64; the table in exact numbers.',
      source:
        'Marching squares, the form in the plane of Lorensen & Cline, Computer Graphics 21 (1987) 163–169; at a saddle the mean of the corners decides.',
      limits: 'An island smaller than a square of the grid is not seen, and a jump is met half-way.',
      where: 'Breakeven.',
    },
    {
      id: 'side by side',
      what: 'The lowest of several, along an input',
      how: 'Results of one unit, such as the cost of a plant by plug, as one input moves: which is the lowest, and where another one becomes it, be it at a crossing or at a jump such as a price break.',
      formulas: ['the smallest *k* for which *f*_{k}(*x*) is the least of all'],
      design:
        '200 even steps over about twice the input’s range; each change is halved up to 80 times in exact numbers, and the shortest number within 18 digits is told.',
      source: 'Bisection.',
      limits:
        'One that is the lowest for less than a step may be missed. Results that differ by less than 1 part in 10²⁶ count as equal.',
      where: 'What matters.',
    },
  ],
};
