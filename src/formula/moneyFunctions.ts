import { wording } from '../language/wording';
import type { Arithmetic } from '../core/arithmetic';
import { plain, type Dimension } from '../core/dimension';
import type { ExampleCell } from './example';
import { fits, inBaseUnits, isPlain, nth, outside, record, type Argument, type Reason, type Typing } from './function';

const perYear: Dimension = new Map([['year', -1]]);
const years: Dimension = new Map([['year', 1]]);

function ratePeriods([rate, periods]: readonly Argument[]): boolean | undefined {
  if (rate === undefined || periods === undefined) return undefined;
  if (isPlain(rate) && isPlain(periods)) return false;
  return fits(rate, perYear) && fits(periods, years) ? true : undefined;
}

function annuityRule(args: readonly Argument[], dimension: Dimension, name: string): Typing | string {
  const dated = ratePeriods(args);
  const wrong = wording`${name} takes two plain numbers, or a rate in %/year and a time in year`;
  return inBaseUnits(dated !== undefined, dated ? dimension : plain, wrong);
}

/** Factor P/A: value now of 1 per period. Newnan, Engineering Economic Analysis, compound interest formulas. */
function annuity<T>(m: Arithmetic<T>, rate: T, n: T): T {
  if (!(m.toNumber(n) > 0 && m.toNumber(rate) > -1)) return m.whole(NaN);
  if (m.toNumber(rate) === 0) return n;
  return m.divide(m.negate(m.growth(rate, m.negate(n))), rate);
}

function annuityReason([rate = NaN, n = NaN]: readonly number[]): Reason {
  if (!(n > 0)) return outside(wording`number of periods not above 0`);
  return outside(rate > -1 ? wording`rate and periods give no finite factor` : wording`rate not above -100 %`);
}

const rateAndLife: readonly ExampleCell[] = [
  ['rate', '8', '%/year'],
  ['life', '10', 'year'],
];

/** Functions of money over time. */
export const moneyFunctions = [
  record({
    name: 'capital_recovery',
    signature: 'capital_recovery(rate, n)',
    summary: wording`Payment per period that repays 1 over n periods (factor A/P); rate 0 gives 1/n.`,
    units: wording`Takes two plain numbers, or a rate in %/year and a time in year; then it gives 1/year, so that a price times it is money a year.`,
    examples: [
      { formula: 'capital_recovery(0, 4)', gives: '0.25' },
      { formula: 'capital_recovery(1, 1)', gives: '2' },
      {
        formula: 'price * capital_recovery(rate, life)',
        gives: '149.0294887',
        unit: 'EUR/year',
        cells: [['price', '1000', 'EUR'], ...rateAndLife],
      },
    ],
    arity: [2, 2],
    typing: (args, name) => annuityRule(args, perYear, name),
    compute: (m, args) => m.divide(m.whole(1), annuity(m, nth(args, 0), nth(args, 1))),
    reason: annuityReason,
  }),
  record({
    name: 'annuity_factor',
    signature: 'annuity_factor(rate, n)',
    summary: wording`Value now of 1 per period for n periods (factor P/A); rate 0 gives n.`,
    units: wording`Takes two plain numbers, or a rate in %/year and a time in year; then it gives year, so that money a year times it is money now.`,
    examples: [
      { formula: 'annuity_factor(0, 4)', gives: '4' },
      { formula: 'annuity_factor(1, 1)', gives: '0.5' },
      {
        formula: 'saving * annuity_factor(rate, life)',
        gives: '6710.081399',
        unit: 'EUR',
        cells: [['saving', '1000', 'EUR/year'], ...rateAndLife],
      },
    ],
    arity: [2, 2],
    typing: (args, name) => annuityRule(args, years, name),
    compute: (m, args) => annuity(m, nth(args, 0), nth(args, 1)),
    reason: annuityReason,
  }),
];
