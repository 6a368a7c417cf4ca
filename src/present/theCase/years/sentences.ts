import { wording } from '../../../language/wording';
import { decimal, type Decimal } from '../../../core/number';
import type { OverYears } from '../../../trade/years/overYears';
import { inPerCent } from '../../text/inPerCent';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import { shown } from '../../text/quantities';
import { spoken } from '../../text/spokenNumber';
import type { Format } from '../../text/numberFormat';
import { gainUnit, outlayUnit, type YearsBudget } from './terms';
import { yearsTexts } from './texts';

/** What the sentences speak of. */
export interface ToldYears {
  readonly found: OverYears;
  readonly made: YearsBudget;
  readonly format: Format;
}

function money(amount: Decimal, { made, format }: ToldYears): string {
  return spoken(amount.abs(), outlayUnit(made), format);
}

function moneyAYear(amount: Decimal, { made, format }: ToldYears): string {
  return spoken(amount.abs(), gainUnit(made), format);
}

/** Years that would be said to be 0. */
const soonest = decimal('0.05');

/** `10 years`, `4.8 years`, `less than a month`. */
export function yearsText(years: Decimal | number, format: Format): string {
  const number = decimal(years.toString());
  // A tenth of a year is as fine as it is said; what rounds to none is less than 19 days.
  if (number.gt(0) && number.lt(soonest)) return wording`less than a month`;
  const text = shown(number, 1, format);
  return text === '1' ? wording`1\u00a0year` : wording`${text}\u00a0years`;
}

function rateText(rate: Decimal, decimals: number, format: Format): string {
  return inPerCent(shown(rate.times(100), decimals, format));
}

function atRate({ found: { asked }, format }: ToldYears): string {
  return asked.rate.isZero() ? wording`without interest` : wording`at ${rateText(asked.rate, 4, format)} a year`;
}

/** The outlay with what it brings a year. */
function outlayPhrase(told: ToldYears): Phrase {
  const { outlay, gain } = told.found.asked;
  const [once, yearly] = [money(outlay, told), moneyAYear(gain, told)];
  if (gain.isZero()) return say`an outlay of ${once} that changes nothing a year`;
  return gain.gt(0) ? say`an outlay of ${once} that brings ${yearly}` : say`an outlay of ${once} that loses ${yearly}`;
}

/** When the outlay is paid back with interest, where there is one. */
function paidSentence(told: ToldYears): Phrase {
  const { discounted, asked } = told.found;
  const [outlay, rate] = [outlayPhrase(told), plainly(atRate(told))];
  if (discounted.kind === 'at once') return say`As the numbers stand, ${outlay} is paid back at once, ${rate}.`;
  if (discounted.kind === 'after') {
    return say`As the numbers stand, ${outlay} is paid back after ${yearsText(discounted.years, told.format)}, ${rate}.`;
  }
  return say`As the numbers stand, ${outlay} is ${wording`not paid back`} within ${yearsText(asked.years, told.format)}, ${rate}.`;
}

function worth(told: ToldYears): Phrase {
  const { netPresentValue, asked } = told.found;
  const over = yearsText(asked.years, told.format);
  if (netPresentValue.isZero()) return say`Over ${over} it is worth just what it costs.`;
  const by = money(netPresentValue, told);
  return netPresentValue.gt(0)
    ? say`Over ${over} it is worth ${by} more today than it costs (net present value).`
    : say`Over ${over} it is worth ${by} less today than it costs (net present value).`;
}

function worthWithout(told: ToldYears): Phrase {
  const { netPresentValue, asked } = told.found;
  const over = yearsText(asked.years, told.format);
  const [rate, worth] = [plainly(atRate(told)), money(netPresentValue, told)];
  return netPresentValue.lt(0)
    ? say`over ${over} ${rate} the change costs ${worth} today (net present value).`
    : say`over ${over} ${rate} the change is worth ${worth} today (net present value).`;
}

/** When the outlay is paid back and what it is worth, in the words of someone who decides. */
export function yearsFinding(told: ToldYears): Phrase {
  const { asked } = told.found;
  if (asked.outlay.isZero()) {
    return say`As the numbers stand there is no outlay, so it is paid back at once: ${worthWithout(told)}`;
  }
  if (asked.outlay.lt(0)) {
    return say`As the numbers stand the change frees ${money(asked.outlay, told)} at the start, so there is nothing to pay back: ${worthWithout(told)}`;
  }
  return sentences(paidSentence(told), worth(told));
}

function simply(told: ToldYears): Phrase {
  const { asked, simple } = told.found;
  if (asked.rate.isZero() || asked.outlay.lte(0)) return [];
  if (simple.kind === 'at once') return say`Without interest it is paid back at once.`;
  if (simple.kind === 'after')
    return say`Without interest it is paid back after ${yearsText(simple.years, told.format)}.`;
  return say`Without interest it is ${wording`not paid back`} within ${yearsText(asked.years, told.format)}.`;
}

function evenly(told: ToldYears): Phrase {
  const { annualEquivalent } = told.found;
  if (annualEquivalent.isZero()) return [];
  const yearly = moneyAYear(annualEquivalent, told);
  return annualEquivalent.gt(0)
    ? say`Spread evenly over the years that is a gain of ${yearly} (annual equivalent).`
    : say`Spread evenly over the years that is a loss of ${yearly} (annual equivalent).`;
}

function internally(told: ToldYears): Phrase {
  const { internal, asked } = told.found;
  if (internal.kind === 'several') {
    return say`No internal rate is told: money turns round more than once, so more than one rate fits.`;
  }
  if (internal.kind === 'none')
    return say`There is no internal rate: at none do the outlay and what it brings come to the same.`;
  const rate = rateText(internal.rate, 1, told.format);
  return asked.outlay.gt(0)
    ? say`The money put in earns ${rate} a year (internal rate).`
    : say`The money that is freed costs ${rate} a year (internal rate).`;
}

/** The other measures, each in a sentence with its name in the trade. */
export function yearsRemarks(told: ToldYears): Phrase {
  const isBelow = told.found.asked.rate.lt(0);
  const isParted = [told.found.simple, told.found.discounted].some(({ kind }) => kind === 'after');
  return sentences(
    simply(told),
    evenly(told),
    internally(told),
    isBelow ? plainly(yearsTexts.belowZero) : [],
    isParted ? plainly(yearsTexts.within) : [],
  );
}
