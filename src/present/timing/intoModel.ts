import { wording } from '../../language/wording';
import { numberToText, type Decimal } from '../../core/number';
import { parts as sides } from '../../core/ratio';
import type { Cell } from '../../model/cell';
import { ownSources } from '../../model/change/sources';
import { editIn, type Edit } from '../../model/edit';
import type { Model } from '../../model/model';
import { standardTime, type TimeSpread } from '../../trade/timeStudy';
import { plainly, say, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import { beyondRange, endText } from '../text/rangeEnds';
import type { Format } from '../text/numberFormat';
import { toPut } from './secondsDigits';
import type { TimingTerms } from './terms';

export type TimeUsed = 'mean' | 'standard';

/**
 * The time that goes into the model: what a person chose, else the mean where the model has an allowance of its own.
 * @param own whether it has
 */
export function timeUsed(chosen: TimeUsed | undefined, own: boolean, { hasStandardTime }: TimingTerms): TimeUsed {
  if (!hasStandardTime) return 'mean';
  return chosen ?? (own ? 'mean' : 'standard');
}

/** A timed value as it would be put into an input, in the input's unit. */
export interface TimeOffer {
  readonly cell: Cell;
  readonly today: Decimal;
  readonly value: Decimal;
  /** Where the mean may lie; undefined where that says nothing or the entry can have no range. */
  readonly range: readonly [low: Decimal, high: Decimal] | undefined;
  /** Why there is no range; blank where there is. */
  readonly noRange: string;
  /** Where it counts, where the model has several plans: in all, in those without a number of their own, or in one. */
  readonly where: 'every plan' | 'shared' | 'one plan' | 'the only plan';
  /** Name of the plan that it is put in. */
  readonly plan: string;
  /** Batches timed. */
  readonly batches: number;
}

/** A time that can go into the model: of a step, of one of its ways, or of a curve of learning. */
export interface TimedValue {
  readonly secondsPerPlant: Decimal;
  readonly batches: number;
  /** Undefined for a single batch. */
  readonly spread: Pick<TimeSpread, 'standardError' | 'interval'> | undefined;
}

/** Seconds as the model should have them: as timed, or with the allowance. */
export function lengthened(seconds: Decimal, used: TimeUsed, { terms }: TimingTerms): Decimal {
  return used === 'mean' ? seconds : standardTime(seconds, terms);
}

/** Why an entry can have no range, whatever was timed; blank where it can. */
export function whyNoColumns({ sheet }: Model, own: boolean): string {
  if (own) return wording`This plan has a number of its own there, which counts as certain.`;
  const hasColumns = ['low', 'high'].every((column) => sheet.columns.includes(column));
  return hasColumns ? '' : wording`The model’s file has no columns for ranges.`;
}

function whyNoRange({ spread }: Pick<TimedValue, 'spread'>, model: Model, own: boolean): string {
  const columns = whyNoColumns(model, own);
  if (columns !== '') return columns;
  if (spread === undefined) return wording`One batch gives no range.`;
  if (spread.standardError.isZero()) return wording`Batches that agree give no range.`;
  return spread.interval[0].gt(0)
    ? ''
    : wording`The interval reaches below 0: time more batches before it becomes a range.`;
}

function whereOf({ plans }: Model, { id }: Cell, own: boolean): TimeOffer['where'] {
  if (plans.length === 1) return 'the only plan';
  if (own) return 'one plan';
  return plans.some(({ contents }) => contents[id]?.own === true) ? 'shared' : 'every plan';
}

/** Where an offer would count. */
export function putPlace(model: Model, plan: number, cell: Cell, own: boolean): Pick<TimeOffer, 'where' | 'plan'> {
  return { where: whereOf(model, cell, own), plan: model.plans[plan]?.name ?? '' };
}

/** What a step's time would put into an input; undefined where the plan has no number of its own or shared there. */
export function offerOf(
  model: Model,
  plan: number,
  cell: Cell,
  time: TimedValue,
  used: TimeUsed,
  timing: TimingTerms,
): TimeOffer | undefined {
  const content = model.plans[plan]?.contents[cell.id];
  if (content?.kind !== 'input' || cell.unit === undefined) return undefined;
  const { over, under } = sides(cell.unit.scale);
  const inUnit = (seconds: Decimal): Decimal => toPut(lengthened(seconds, used, timing).times(under).dividedBy(over));
  const noRange = whyNoRange(time, model, content.own);
  const ends = time.spread?.interval;
  return {
    cell,
    today: content.number,
    value: inUnit(time.secondsPerPlant),
    range: noRange === '' && ends !== undefined ? [inUnit(ends[0]), inUnit(ends[1])] : undefined,
    noRange,
    batches: time.batches,
    ...putPlace(model, plan, cell, content.own),
  };
}

/** Whether an input holds the offered value already, its range too where that is asked for. */
export function isPut({ cell: { range }, today, value, range: offered }: TimeOffer, withRange: boolean): boolean {
  if (!today.eq(value)) return false;
  if (!withRange || offered === undefined) return true;
  return range !== undefined && range.low.eq(offered[0]) && range.high.eq(offered[1]);
}

/** The edits that put an offer into a model, its range first so that the number never stands outside. */
export function editsOf(offer: TimeOffer, model: Model, plan: number, withRange: boolean, today: Date): Edit[] {
  const { cell, value, range, batches } = offer;
  const source = ownSources.timed(batches, today);
  const number = { ...editIn(model, model.plans[plan]!, cell.id, numberToText(value)), source };
  if (!withRange || range === undefined) return [number];
  const end = (column: string, at: Decimal): Edit => ({ row: cell.row, column, text: numberToText(at) });
  return [end('low', range[0]), end('high', range[1]), number];
}

function placeText({ where, plan }: TimeOffer): Phrase {
  if (where === 'one plan') return say`, in ${plan} only`;
  if (where === 'the only plan') return [];
  return plainly(
    where === 'shared' ? wording`, in every plan that has no number of its own there` : wording`, in every plan`,
  );
}

/** What was put where: `Move a plant: 12.71 s per plant instead of 12 s per plant, range 11.9 to 13.5.` */
export function putSentence(offer: TimeOffer, withRange: boolean, format: Format): Phrase {
  const { cell, today, value, range } = offer;
  const isRange = withRange && range !== undefined;
  const ends = isRange ? say`, range ${endText(range[0], cell, format)} to ${endText(range[1], cell, format)}` : [];
  const [now, before] = [spoken(value, cell.unit, format), plainly(spoken(today, cell.unit, format))];
  const besides = isRange ? ends : beyondRange(value, cell, format);
  return say`${cell.label}: ${now} instead of ${before}${besides}${placeText(offer)}.`;
}
