import type { Decimal } from '../../core/number';
import { parts as sides } from '../../core/ratio';
import { isCurrency } from '../../core/unit';
import type { Cell } from '../../model/cell';
import type { Model } from '../../model/model';
import type { Question } from '../../model/response';
import { lever } from '../../model/view';
import { isGain } from '../../trade/betterWay';
import { decimalsFor } from '../text/digits';
import { say, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import type { Format } from '../text/numberFormat';
import { lengthened, type TimeUsed } from './intoModel';
import type { TimingTerms } from './terms';
import type { WaysFound } from './ways';

/** What the quicker way changes in a result of the model. */
export interface WaysWorth {
  readonly result: Cell;
  readonly input: Cell;
  readonly plan: string;
  /** Whether the batches tell the two ways apart. */
  readonly isSettled: boolean;
  /** Result with the quicker way's seconds less that with the slower way's; NaN where it cannot be computed. */
  readonly change: Decimal;
  /** The same at both ends of the interval of the difference; undefined where there is none. */
  readonly interval: readonly [low: Decimal, high: Decimal] | undefined;
}

function isMoney({ unit }: Cell): boolean {
  return [...(unit?.dimension ?? [])].some(([kind, power]) => isCurrency(kind) && power === 1);
}

/** Whether money is that of a year or another span of time, and of nothing else such as a board. */
function isByTime({ unit }: Cell): boolean {
  return unit?.dimension.size === 2 && unit.dimension.get('day') === -1;
}

/**
 * Results in money, those to ask first in front: headlines before others, money a year before money of
 * another kind, what is earned before what is turned over.
 */
export function moneyResults({ cells, plans }: Model, plan: number): Cell[] {
  const rank = (cell: Cell): number =>
    (cell.role === 'headline' ? 0 : 4) + (isByTime(cell) ? 0 : 2) + (isGain(cell) ? 0 : 1);
  return cells
    .filter((cell) => isMoney(cell) && plans[plan]?.contents[cell.id]?.kind === 'calculated')
    .sort((a, b) => rank(a) - rank(b));
}

/**
 * The worth of a difference between two ways: the model is asked for a result with the seconds of the slower way in an
 * input, and with those less the difference. Undefined where the result does not depend on the input.
 */
export function waysWorth(
  question: Question,
  input: Cell,
  { first, saved, spread }: WaysFound,
  used: TimeUsed,
  timing: TimingTerms,
): WaysWorth | undefined {
  const { view } = question;
  const moved = lever(view, input.id);
  const result = view.model.cells[view.result];
  if (moved === undefined || result === undefined || input.unit === undefined) return undefined;
  const response = question.response([moved]);
  if (!response.depends) return undefined;
  const { over, under } = sides(input.unit.scale);
  const at = (less: Decimal): Decimal => {
    const seconds = lengthened(first.secondsPerPlant.minus(less), used, timing);
    return response.exact([seconds.times(under).dividedBy(over)]);
  };
  const slow = at(saved.minus(saved));
  const ends = spread?.interval.map((end) => at(end).minus(slow)).sort((a, b) => a.cmp(b));
  const interval = ends === undefined || ends.some((end) => end.isNaN()) ? undefined : ([ends[0]!, ends[1]!] as const);
  return {
    result,
    input,
    plan: view.plan.name,
    isSettled: spread?.isSettled === true,
    change: at(saved).minus(slow),
    interval,
  };
}

/** What the difference is worth on this farm: `On this farm that is 1,900 EUR a year more of Margin, between …`. */
export function worthSentence({ result, input, plan, isSettled, change, interval }: WaysWorth, format: Format): Phrase {
  if (change.isNaN()) return say`What that is worth cannot be worked out: ${result.label} has no value there.`;
  const place = plan === '' ? [] : say`, in ${plan}`;
  if (change.isZero()) {
    return say`On this farm that changes nothing of ${result.label}${place}: the model pays the hours either way.`;
  }
  const amount = spoken(change.abs(), result.unit, format);
  const between = interval === undefined ? [] : betweenText(interval, result, format);
  const [of, moved] = [result.label, input.label];
  if (isSettled)
    return change.gt(0)
      ? say`On this farm that is ${amount} more of ${of}${place}${between}, by the model with ${moved} moved by the difference.`
      : say`On this farm that is ${amount} less of ${of}${place}${between}, by the model with ${moved} moved by the difference.`;
  return change.gt(0)
    ? say`On this farm that would be ${amount} more of ${of}${place}${between}, by the model with ${moved} moved by the difference.`
    : say`On this farm that would be ${amount} less of ${of}${place}${between}, by the model with ${moved} moved by the difference.`;
}

/** Both ends with the decimals of the larger one. */
function betweenText(ends: readonly [low: Decimal, high: Decimal], { unit }: Cell, format: Format): Phrase {
  const larger = ends[0].abs().gt(ends[1].abs()) ? ends[0] : ends[1];
  const [low, high] = ends.map((end) => format.signed(end, unit, decimalsFor(larger, unit)));
  return say`, between ${low!} and ${high!}`;
}
