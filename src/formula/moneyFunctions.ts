import type { Arithmetic } from '../core/arithmetic';
import { plain, type Dimension } from '../core/dimension';
import { fits, isPlain, nth, outside, record, type Argument, type Reason, type Typing } from './function';

const perYear: Dimension = new Map([['year', -1]]);
const years: Dimension = new Map([['year', 1]]);

function ratePeriods([rate, periods]: readonly Argument[]): boolean | undefined {
  if (rate === undefined || periods === undefined) return undefined;
  if (isPlain(rate) && isPlain(periods)) return false;
  return fits(rate, perYear) && fits(periods, years) ? true : undefined;
}

function annuityRule(args: readonly Argument[], dimension: Dimension): Typing | string {
  const dated = ratePeriods(args);
  if (dated === undefined) return 'takes two plain numbers, or a rate in %/year and a time in year';
  return { dimension: dated ? dimension : plain, scale: 'base' };
}

/** Factor P/A: value now of 1 per period. Newnan, Engineering Economic Analysis, compound interest formulas. */
function annuity<T>(m: Arithmetic<T>, rate: T, n: T): T {
  if (!(m.toNumber(n) > 0 && m.toNumber(rate) > -1)) return m.whole(NaN);
  if (m.toNumber(rate) === 0) return n;
  return m.divide(m.negate(m.growth(rate, m.negate(n))), rate);
}

function annuityReason([rate = NaN, n = NaN]: readonly number[]): Reason {
  if (!(n > 0)) return outside('number of periods not above 0');
  return outside(rate > -1 ? 'rate and periods give no finite factor' : 'rate not above -100 %');
}

/** Functions of money over time. */
export const moneyFunctions = [
  record({
    name: 'capital_recovery',
    signature: 'capital_recovery(rate, n)',
    summary: 'Payment per period that repays 1 over n periods (factor A/P); rate 0 gives 1/n.',
    examples: [
      ['capital_recovery(0, 4)', '0.25'],
      ['capital_recovery(1, 1)', '2'],
    ],
    arity: [2, 2],
    typing: (args) => annuityRule(args, perYear),
    compute: (m, args) => m.divide(m.whole(1), annuity(m, nth(args, 0), nth(args, 1))),
    reason: annuityReason,
  }),
  record({
    name: 'annuity_factor',
    signature: 'annuity_factor(rate, n)',
    summary: 'Value now of 1 per period for n periods (factor P/A); rate 0 gives n.',
    examples: [
      ['annuity_factor(0, 4)', '4'],
      ['annuity_factor(1, 1)', '0.5'],
    ],
    arity: [2, 2],
    typing: (args) => annuityRule(args, years),
    compute: (m, args) => annuity(m, nth(args, 0), nth(args, 1)),
    reason: annuityReason,
  }),
];
