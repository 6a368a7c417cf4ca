import { wording } from '../../../language/wording';
import { decimal, type Decimal } from '../../../core/number';
import { divide, parts } from '../../../core/ratio';
import { drawnRange } from '../../../study/drawnRange';
import { countUpTo } from '../../../study/quantile';
import { neededGains, type NeededGains, type OverYears } from '../../../trade/years/overYears';
import { ofHundred } from '../../howSure/rounding';
import type { DrawsFound } from '../../howSure/drawsFound';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import type { Format } from '../../text/numberFormat';
import type { CaseBudget } from '../caseOf';
import { toldShares } from '../verdict';
import { spoken } from '../../text/spokenNumber';
import type { OutlayRange } from './outlayRange';
import { yearsText, type ToldYears } from './sentences';
import { gainUnit, outlayUnit } from './terms';
import { yearsTexts } from './texts';

/** Shares of the draws of the net change. */
export interface YearsOdds {
  /** In which the net present value is above 0. */
  readonly worth: number;
  /** In which the outlay is paid back, with interest, within the years. */
  readonly paidBack: number;
}

/** An outlay that is not certain. */
export interface UnsureOutlay {
  readonly range: OutlayRange;
  /** That of the draws of the net change. */
  readonly seed: number;
}

/** How many draws are made of the outlay where the yearly gain is certain. */
const ownDraws = 100_000;

type Draws = Pick<DrawsFound, 'sorted'> & { readonly certain?: boolean };

/** Draws of the yearly gain in the unit of the budget; the gain itself over and over where only the outlay varies. */
function gainsOf({ sorted, certain }: Draws, gain: number, isUnsure: boolean): Float64Array | undefined {
  if (sorted !== undefined && sorted.length > 0) return sorted;
  return certain === true && isUnsure ? new Float64Array(ownDraws).fill(gain) : undefined;
}

/** Shares of the draws in which the gain is above what an outlay that is drawn beside it needs. */
function drawnOdds(
  gains: Float64Array,
  found: OverYears,
  { range, seed }: UnsureOutlay,
  inBudget: (gain: Decimal) => number,
): YearsOdds {
  const outlays = drawnRange({ ...range, shape: 'triangular' }, found.asked.outlay, gains.length, seed);
  const [none, one] = [decimal(0), decimal(1)].map((outlay) => neededGains(found, outlay)) as [
    NeededGains,
    NeededGains,
  ];
  const start = inBudget(none.worth);
  const each = inBudget(one.paidBack);
  let [worth, paidBack] = [0, 0];
  gains.forEach((gain, i) => {
    const outlay = outlays[i]!;
    if (gain > start + each * outlay) worth += 1;
    if (outlay <= 0 || gain > each * outlay) paidBack += 1;
  });
  return { worth: worth / gains.length, paidBack: paidBack / gains.length };
}

/**
 * The odds from the draws that the case has made of its net change. With an outlay that is certain, both rise with the
 * yearly gain, so it is enough to count the draws above the gain that each needs; one with a range is drawn beside
 * them, triangular about the outlay itself and apart from all entries. Undefined without draws.
 */
export function yearsOdds(
  draws: Draws,
  found: OverYears,
  made: Pick<CaseBudget, 'unit' | 'currency'>,
  unsure?: UnsureOutlay,
): YearsOdds | undefined {
  const { over, under } = parts(divide(gainUnit(made).scale, made.unit.scale));
  const inBudget = (gain: Decimal): number => gain.times(over).dividedBy(under).toNumber();
  const gains = gainsOf(draws, inBudget(found.asked.gain), unsure !== undefined);
  if (gains === undefined) return undefined;
  if (unsure !== undefined) return drawnOdds(gains, found, unsure, inBudget);
  const { worth, paidBack } = neededGains(found);
  const above = (value: number): number => 1 - countUpTo(gains, value) / gains.length;
  const isPaid = found.asked.outlay.lte(0);
  return { worth: above(inBudget(worth)), paidBack: isPaid ? 1 : above(inBudget(paidBack)) };
}

function worthClause({ worth }: YearsOdds): Phrase {
  const often = ofHundred(worth);
  return worth > 0 && worth <= toldShares.no
    ? say`only in ${often} from all ranges at once it is worth more than it costs`
    : say`in ${often} from all ranges at once it is worth more than it costs`;
}

/** Whether it pays over the years. @param how often it does, as a clause */
function answer({ worth }: YearsOdds, how: Phrase): Phrase {
  if (worth >= toldShares.yes) return say`${wording`It pays over the years`}: ${how}.`;
  if (worth <= toldShares.no) return say`${wording`It does not pay over the years`}: ${how}.`;
  return say`${wording`It cannot be told yet`} whether it pays over the years: ${how}.`;
}

/** How the odds take the outlay: as certain, or drawn from its range. */
export type OutlayTaken =
  | { readonly kind: 'certain' }
  | { readonly kind: 'hangs on ranges' }
  | { readonly kind: 'drawn'; readonly range: OutlayRange };

function outlayPhrase(taken: OutlayTaken, made: Pick<CaseBudget, 'currency'>, format: Format): Phrase {
  if (taken.kind === 'certain') return [];
  if (taken.kind === 'hangs on ranges') return plainly(yearsTexts.takenAsItStands);
  const unit = outlayUnit(made);
  const ends = [taken.range.low, taken.range.high].map((end) => spoken(end, unit, format));
  return say`The outlay is drawn too, between ${ends[0]!} and ${ends[1]!}, with the same start number.`;
}

/** Whether it pays over the years and how sure that is, and how often the outlay is paid back in time. */
export function yearsOddsSentence(
  odds: YearsOdds,
  { found: { asked }, made, format }: ToldYears,
  taken: OutlayTaken,
): Phrase {
  const within = yearsText(asked.years, format);
  const isSame = ofHundred(odds.paidBack) === ofHundred(odds.worth);
  const worth = worthClause(odds);
  const isSaid = asked.outlay.gt(0) || taken.kind === 'drawn';
  const withPaid = isSame
    ? say`${worth}, and as often paid back within ${plainly(within)}`
    : say`${worth}, and paid back within ${within} in ${ofHundred(odds.paidBack)}`;
  return sentences(answer(odds, isSaid ? withPaid : worth), outlayPhrase(taken, made, format));
}
