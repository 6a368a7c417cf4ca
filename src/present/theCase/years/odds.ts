import { divide, parts } from '../../../core/ratio';
import { neededGains, type OverYears } from '../../../trade/years/overYears';
import { countUpTo } from '../../../study/quantile';
import { ofHundred } from '../../howSure/rounding';
import type { DrawsFound } from '../../howSure/drawsFound';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import type { Format } from '../../text/numberFormat';
import type { CaseBudget } from '../caseOf';
import { toldShares } from '../verdict';
import { yearsText } from './sentences';
import { gainUnit } from './terms';

/** Shares of the draws of the net change. */
export interface YearsOdds {
  /** In which the net present value is above 0. */
  readonly worth: number;
  /** In which the outlay is paid back, with interest, within the years. */
  readonly paidBack: number;
}

/**
 * The odds from the draws that the case has made of its net change: with an outlay that is certain, both rise with the
 * yearly gain, so it is enough to count the draws above the gain that each needs. Undefined without draws.
 */
export function yearsOdds(
  { sorted }: Pick<DrawsFound, 'sorted'>,
  found: OverYears,
  made: Pick<CaseBudget, 'unit' | 'currency'>,
): YearsOdds | undefined {
  if (sorted === undefined || sorted.length === 0) return undefined;
  const { over, under } = parts(divide(gainUnit(made).scale, made.unit.scale));
  const { worth, paidBack } = neededGains(found);
  const inBudget = (gain: typeof worth): number => gain.times(over).dividedBy(under).toNumber();
  const above = (value: number): number => 1 - countUpTo(sorted, value) / sorted.length;
  const isPaid = found.asked.outlay.lte(0);
  return { worth: above(inBudget(worth)), paidBack: isPaid ? 1 : above(inBudget(paidBack)) };
}

function answer({ worth }: YearsOdds): Phrase {
  const often = ofHundred(worth);
  const draws = plainly('from all ranges at once it is worth more than it costs');
  if (worth >= toldShares.yes) return say`${'It pays over the years'}: in ${often} ${draws}`;
  if (worth <= toldShares.no)
    return say`${'It does not pay over the years'}: ${plainly(worth > 0 ? 'only in' : 'in')} ${often} ${draws}`;
  return say`${'It cannot be told yet'} whether it pays over the years: in ${often} ${draws}`;
}

/** Whether it pays over the years and how sure that is, and how often the outlay is paid back in time. */
export function yearsOddsSentence(
  odds: YearsOdds,
  { asked }: OverYears,
  isOutlayUnsure: boolean,
  format: Format,
): Phrase {
  const within = yearsText(asked.years, format);
  const isSame = ofHundred(odds.paidBack) === ofHundred(odds.worth);
  const paid = isSame
    ? plainly(`, and as often paid back within ${within}`)
    : say`, and paid back within ${within} in ${ofHundred(odds.paidBack)}`;
  const outlay = isOutlayUnsure
    ? plainly('The outlay is taken as it stands today, though it hangs on entries with a range.')
    : [];
  return sentences(say`${answer(odds)}${asked.outlay.lte(0) ? [] : paid}.`, outlay);
}
