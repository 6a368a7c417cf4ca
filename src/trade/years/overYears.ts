import { wording } from '../../language/wording';
import { decimal, sum, type Decimal } from '../../core/number';
import { problem, type Problem } from '../../core/problem';
import { internalRate, type InternalRate } from './internalRate';

/** What is paid once and what it brings each year. */
export interface YearsAsked {
  /** Paid today; negative where the change frees money. */
  readonly outlay: Decimal;
  /** More money at the end of each year; negative for less. */
  readonly gain: Decimal;
  /** Whole years looked at, 1 to `mostYears`. */
  readonly years: number;
  /** A share a year, above −1. */
  readonly rate: Decimal;
  /** What the bought things are still worth at the end of the last year; negative where getting rid of them costs. */
  readonly left: Decimal;
}

/** Nobody plans boards for longer. */
export const mostYears = 100;

/** Money that moves at one instant. */
interface YearLine {
  readonly what: 'outlay' | 'gain' | 'left';
  /** Whole years from today. */
  readonly year: number;
  readonly amount: Decimal;
  /** Worth today of 1 at that instant. */
  readonly factor: Decimal;
  readonly present: Decimal;
  /** The present values up to and with this line. */
  readonly cumulative: Decimal;
}

/** When the yearly gains have paid the outlay back. */
export type Payback =
  /** There is nothing to pay back. */
  | { readonly kind: 'at once' }
  /** In years from today, with a part of a year by what that year brings. */
  | { readonly kind: 'after'; readonly years: Decimal }
  | { readonly kind: 'not within' };

/** What an outlay brings over the years. */
export interface OverYears {
  readonly asked: YearsAsked;
  /** The outlay, the gain of each year, and the value left where there is one. */
  readonly lines: readonly YearLine[];
  readonly netPresentValue: Decimal;
  /** The same amount at the end of each year that is worth as much: net present value × capital recovery factor. */
  readonly annualEquivalent: Decimal;
  /** Present value of 1 at the end of each year, the factor P/A. */
  readonly annuity: Decimal;
  /** Discount factor of the end of the last year, P/F. */
  readonly lastFactor: Decimal;
  readonly simple: Payback;
  readonly discounted: Payback;
  readonly internal: InternalRate;
}

/** Why a question of money over years cannot be answered; undefined where it can. */
function yearsFault({ outlay, gain, years, rate, left }: YearsAsked): Problem | undefined {
  if (!Number.isInteger(years) || years < 1 || years > mostYears) {
    return problem(
      'years-horizon',
      wording`no whole number of years from 1 to ${mostYears}: ${years}. Look at one year or more.`,
    );
  }
  if (!(rate.isFinite() && rate.gt(-1))) {
    return problem(
      'years-rate',
      wording`no rate above −100 % a year: ${rate.times(100).toString()} %. At such a rate money that comes later has no worth today.`,
    );
  }
  const unknown = [outlay, gain, left].find((amount) => !amount.isFinite());
  return (
    unknown &&
    problem(
      'years-amount',
      wording`no amount of money: ${unknown.toString()}. Give outlay, gain and what is left as numbers.`,
    )
  );
}

/**
 * When amounts that come at each year’s end have paid the outlay; within that year they are taken to come evenly. What
 * is left at the end is not counted, as it comes only with the end.
 */
function payback(outlay: Decimal, amounts: readonly Decimal[]): Payback {
  if (outlay.lte(0)) return { kind: 'at once' };
  let open = outlay;
  for (const [i, amount] of amounts.entries()) {
    if (amount.gte(open) && amount.gt(0)) return { kind: 'after', years: open.dividedBy(amount).plus(i) };
    open = open.minus(amount);
  }
  return { kind: 'not within' };
}

/** Discount factors of the ends of years 1, 2, …: 1 ÷ (1 + rate)^year. */
function factorsOf(rate: Decimal, years: number): Decimal[] {
  const growth = rate.plus(1);
  return Array.from({ length: years }, (_, i) => decimal(1).dividedBy(growth.pow(i + 1)));
}

function linesOf({ outlay, gain, years, left }: YearsAsked, factors: readonly Decimal[]): YearLine[] {
  const moved = [
    { what: 'outlay' as const, year: 0, amount: outlay.negated(), factor: decimal(1) },
    ...factors.map((factor, i) => ({ what: 'gain' as const, year: i + 1, amount: gain, factor })),
    ...(left.isZero() ? [] : [{ what: 'left' as const, year: years, amount: left, factor: factors.at(-1)! }]),
  ];
  let cumulative = decimal(0);
  return moved.map((line) => {
    const present = line.amount.times(line.factor);
    cumulative = cumulative.plus(present);
    return { ...line, present, cumulative };
  });
}

/**
 * Payback, net present value, annual equivalent and internal rate of an outlay today that brings the same gain at the
 * end of each year.
 * Source: Newnan, Engineering Economic Analysis, present worth, annual cash flow and payback period.
 * @returns a fault where a term cannot be used, or an amount is not known
 */
export function overYears(asked: YearsAsked): OverYears | Problem {
  const fault = yearsFault(asked);
  if (fault !== undefined) return fault;
  const { outlay, gain, years, rate, left } = asked;
  const factors = factorsOf(rate, years);
  const lines = linesOf(asked, factors);
  const netPresentValue = sum(lines.map(({ present }) => present));
  const annuity = sum(factors);
  const gains = factors.map(() => gain);
  const flows = [outlay.negated(), ...gains.map((amount, i) => (i === years - 1 ? amount.plus(left) : amount))];
  return {
    asked,
    lines,
    netPresentValue,
    annualEquivalent: netPresentValue.dividedBy(annuity),
    annuity,
    lastFactor: factors.at(-1)!,
    simple: payback(outlay, gains),
    discounted: payback(
      outlay,
      factors.map((factor) => gain.times(factor)),
    ),
    internal: internalRate(flows),
  };
}

/** The yearly gain above which the net present value is above 0, and from which on the outlay is paid back in time. */
export interface NeededGains {
  readonly worth: Decimal;
  readonly paidBack: Decimal;
}

/**
 * Both rise straight with the outlay, and draws of the gain need only be counted above these.
 * @param outlay another one than was asked for, such as one that was drawn
 */
export function neededGains({ asked, annuity, lastFactor }: OverYears, outlay: Decimal = asked.outlay): NeededGains {
  return {
    worth: outlay.minus(asked.left.times(lastFactor)).dividedBy(annuity),
    paidBack: outlay.dividedBy(annuity),
  };
}
