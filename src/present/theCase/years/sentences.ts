import { wording } from '../../../language/wording';
import { decimal, type Decimal } from '../../../core/number';
import type { OverYears, Payback } from '../../../trade/years/overYears';
import { inPerCent } from '../../text/inPerCent';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import { shown } from '../../text/quantities';
import { spoken } from '../../text/spokenNumber';
import { space, type Format } from '../../text/numberFormat';
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

/** `10 years`, `4.8 years`. */
export function yearsText(years: Decimal | number, format: Format): string {
  const text = shown(decimal(years.toString()), 1, format);
  return `${text}${space}${text === '1' ? 'year' : 'years'}`;
}

function rateText(rate: Decimal, decimals: number, format: Format): string {
  return inPerCent(shown(rate.times(100), decimals, format));
}

function atRate({ found: { asked }, format }: ToldYears): string {
  return asked.rate.isZero() ? wording`without interest` : wording`at ${rateText(asked.rate, 4, format)} a year`;
}

/** What the yearly gain is called, with its amount. */
function gainPhrase(told: ToldYears): Phrase {
  const { gain } = told.found.asked;
  if (gain.isZero()) return plainly(wording`changes nothing a year`);
  return say`${plainly(gain.gt(0) ? 'brings' : 'loses')} ${moneyAYear(gain, told)}`;
}

function whenPaid(payback: Payback, { found: { asked }, format }: ToldYears): Phrase {
  if (payback.kind === 'at once') return plainly(wording`is paid back at once`);
  if (payback.kind === 'after') return say`is paid back after ${yearsText(payback.years, format)}`;
  return say`is ${wording`not paid back`} within ${yearsText(asked.years, format)}`;
}

function worth(told: ToldYears): Phrase {
  const { netPresentValue, asked } = told.found;
  const over = yearsText(asked.years, told.format);
  if (netPresentValue.isZero()) return say`Over ${over} it is worth just what it costs.`;
  const way = plainly(netPresentValue.gt(0) ? 'more' : 'less');
  return say`Over ${over} it is worth ${money(netPresentValue, told)} ${way} today than it costs (net present value).`;
}

function worthWithout(told: ToldYears): Phrase {
  const { netPresentValue, asked } = told.found;
  const over = yearsText(asked.years, told.format);
  const is = plainly(netPresentValue.lt(0) ? 'costs' : wording`is worth`);
  return say`over ${over} ${plainly(atRate(told))} the change ${is} ${money(netPresentValue, told)} today (net present value).`;
}

/** When the outlay is paid back and what it is worth, in the words of someone who decides. */
export function yearsFinding(told: ToldYears): Phrase {
  const { asked, discounted } = told.found;
  if (asked.outlay.isZero()) {
    return say`As the numbers stand there is no outlay, so it is paid back at once: ${worthWithout(told)}`;
  }
  if (asked.outlay.lt(0)) {
    return say`As the numbers stand the change frees ${money(asked.outlay, told)} at the start, so there is nothing to pay back: ${worthWithout(told)}`;
  }
  return sentences(
    say`As the numbers stand, an outlay of ${money(asked.outlay, told)} that ${gainPhrase(told)} ${whenPaid(discounted, told)}${plainly(asked.rate.isZero() ? wording`, without interest` : `, ${atRate(told)}`)}.`,
    worth(told),
  );
}

function simply(told: ToldYears): Phrase {
  const { asked, simple } = told.found;
  if (asked.rate.isZero() || asked.outlay.lte(0)) return [];
  return say`Without interest it ${whenPaid(simple, told)}.`;
}

function evenly(told: ToldYears): Phrase {
  const { annualEquivalent } = told.found;
  if (annualEquivalent.isZero()) return [];
  const way = plainly(annualEquivalent.gt(0) ? wording`a gain` : wording`a loss`);
  return say`Spread evenly over the years that is ${way} of ${moneyAYear(annualEquivalent, told)} (annual equivalent).`;
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
