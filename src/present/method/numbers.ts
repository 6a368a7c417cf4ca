import { wording } from '../../language/wording';
import type { Chapter } from './entry';

export const numbers: Chapter = {
  heading: wording`Numbers`,
  entries: [
    {
      id: 'digits',
      what: wording`Exact numbers and quick ones`,
      how: wording`Every figure that you read is computed in decimals with 34 significant digits, as they are typed: 0.1 is a tenth. Bars, curves and draws while you type are computed from the same checked formulas in float64, the binary numbers of about 16 digits that a processor has; the exact ones take their place as soon as they are ready. Conversions of units are exact fractions, made as late as they can be.`,
      formulas: [
        wording`| *exact* − *float64* | ≤ 10^{−12} × the larger of | *exact* | and the largest number met on the way`,
      ],
      design: wording`Tested at thousands of random points of every shipped model. Exponentials, logarithms, powers and sines in draws are the app’s own, so that every machine gives the same digits.`,
      source: wording`Decimals: the decimal128 format of IEEE 754-2019. Exponential and logarithm: Tang, ACM Transactions on Mathematical Software 15 (1989) 144–157 and 16 (1990) 378–400.`,
      limits: wording`A sum that nearly cancels keeps the error of its parts. Functions such as roots are rounded at the last digit.`,
      where: wording`Everywhere.`,
    },
    {
      id: 'rounding',
      what: wording`Rounding`,
      how: wording`Rounding is for showing only, half away from zero; nothing is computed from a rounded number. Totals of money go to the currency’s smallest unit, from 1,000 up to the whole; money for each of something has at least three significant digits; all else four. Figures that come from draws are shown about as finely as a hundredth of their spread.`,
      source: wording`Smallest units of currencies: ISO 4217.`,
      limits: wording`Rounded lines may not add up to the rounded total. The full number is one click away.`,
      where: wording`Everywhere.`,
    },
    {
      id: 'budget',
      what: wording`What changes in a year`,
      how: wording`Of every return and cost, the number in one plan less that in the other. What brings money stands on one side, what takes it on the other, each thing once.`,
      formulas: [wording`*net change* = added returns + reduced costs − added costs − reduced returns`],
      source: wording`North Dakota State University, Introduction to Partial Budgeting; New Mexico State University, Guide Z-123 (2021).`,
      limits: wording`It says nothing of what stays the same, so nothing of whether either plan earns its keep. A line that cannot be computed makes the net change unknown.`,
      where: wording`Numbers, and the command line.`,
    },
  ],
};
