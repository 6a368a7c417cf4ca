import { numberToText, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { editIn, type Edit } from '../../model/edit';
import type { Model } from '../../model/model';
import type { Values } from '../../model/values';
import { cropTime, lastNumberFor, type CropTime } from '../../trade/cropTime';
import type { LinkedPhrase } from '../text/linkedPhrase';
import type { Format } from '../text/numberFormat';
import type { Phrase } from '../text/phrase';
import { effectOf, moneyResult, type Compared } from './effect';
import { effectPhrase, freePhrase, timeChangedPhrase, timesDifferPhrase, unlessPhrase, were } from './texts';

/** What may flatter an answer: which entry it is about, and what the answer would be otherwise. */
export interface HiddenMoney {
  readonly phrase: LinkedPhrase;
  /** The entry that the link leads to. */
  readonly cell: Cell | undefined;
  /** Undefined where the answer would be the same, or cannot be computed. */
  readonly hidden: Phrase | undefined;
}

/** A model with its values now and before the last change, and the plans that are compared. */
export interface Watched {
  readonly model: Model;
  readonly values: readonly Values[];
  readonly compared: Compared;
  /** Days from set-out to harvest before the last change, by plan; undefined where that was of another kind. */
  readonly daysBefore: (plan: number) => Decimal | undefined;
  readonly format: Format;
}

function timeOf({ model, values }: Watched, plan: number | undefined): CropTime | undefined {
  const [one, its] = plan === undefined ? [] : [model.plans[plan], values[plan]];
  return one === undefined || its === undefined ? undefined : cropTime(model, one, its);
}

function hiddenBy(watched: Watched, edits: readonly Edit[], condition: Phrase): Phrase | undefined {
  const { model, values, compared, format } = watched;
  const result = moneyResult(model);
  const effect = result && effectOf(model, values, compared, result, edits);
  return result && effect && effectPhrase(condition, result, compared.against !== undefined, effect, format);
}

function lastSetTo({ model, compared }: Watched, time: CropTime, days: Decimal): Edit[] {
  const number = lastNumberFor(time, days);
  const plan = model.plans[compared.plan];
  if (number === undefined || plan === undefined || time.last === undefined) return [];
  return [editIn(model, plan, time.last.id, numberToText(number))];
}

function timesDiffer(watched: Watched): HiddenMoney[] {
  const { model, compared, format } = watched;
  const [own, other] = [timeOf(watched, compared.plan), timeOf(watched, compared.against)];
  if (own === undefined || other === undefined || own.days.eq(other.days)) return [];
  const names = [compared.plan, compared.against ?? 0].map((plan) => model.plans[plan]?.name ?? '');
  const phrase = timesDifferPhrase(names as [string, string], [own.days, other.days], own.last, format);
  const hidden = hiddenBy(watched, lastSetTo(watched, own, other.days), were.asLong(other.days, own.last, format));
  return [{ phrase, cell: own.last, hidden }];
}

function timeChanged(watched: Watched): HiddenMoney[] {
  const { model, compared, format } = watched;
  const own = timeOf(watched, compared.plan);
  const before = watched.daysBefore(compared.plan);
  if (own === undefined || before === undefined || own.days.eq(before)) return [];
  const phrase = timeChangedPhrase(model.plans[compared.plan]?.name ?? '', before, own.days, own.last, format);
  const hidden = hiddenBy(watched, lastSetTo(watched, own, before), were.asBefore(before, own.last, format));
  return [{ phrase, cell: own.last, hidden }];
}

/** What a guess is multiplied with, where the plan has some of it. */
function multiplied({ model, values, compared }: Watched, cell: Cell): { cell: Cell; value: Decimal } | undefined {
  const plan = model.plans[compared.plan];
  const product = new RegExp(`(?<![\\w.])(?:${cell.name} \\* (\\w+)|(\\w+) \\* ${cell.name})(?!\\w)`);
  for (const reader of plan?.structure.feeds[cell.id] ?? []) {
    const found = product.exec(plan?.contents[reader]?.text ?? '');
    const id = model.ids.get(found?.[1] ?? found?.[2] ?? '');
    const other = id === undefined ? undefined : model.cells[id];
    const value = id === undefined ? undefined : values[compared.plan]?.numbers[id];
    if (other !== undefined && value?.gt(0) === true) return { cell: other, value };
  }
  return undefined;
}

/** Guesses at 0 whose range goes on above it: what they stand for costs nothing as long as they stand there. */
function free(watched: Watched): HiddenMoney[] {
  const { model, compared, format } = watched;
  const plan = model.plans[compared.plan];
  if (plan === undefined) return [];
  return model.cells.flatMap((cell) => {
    const content = plan.contents[cell.id];
    const isFree = content?.kind === 'input' && !content.own && content.number.isZero();
    if (!isFree || cell.range?.low.isZero() !== true || !cell.range.high.gt(0)) return [];
    const edits = [editIn(model, plan, cell.id, numberToText(cell.range.high))];
    const hidden = hiddenBy(watched, edits, were.atHigh(cell, format));
    return hidden === undefined ? [] : [{ phrase: freePhrase(cell, multiplied(watched, cell), format), cell, hidden }];
  });
}

/** Checks that do not hold as long as an entry is more than 0, where that entry costs something. */
function unless(watched: Watched): HiddenMoney[] {
  const { model, values, compared } = watched;
  const plan = model.plans[compared.plan];
  if (plan === undefined) return [];
  return model.cells.flatMap((check) => {
    if (check.role !== 'check' || values[compared.plan]?.numbers[check.id]?.isZero() !== true) return [];
    const name = /^(\w+) == 0 or /.exec(plan.contents[check.id]?.text ?? '')?.[1] ?? '';
    const input = inputNamed(model, compared.plan, name);
    if (input === undefined) return [];
    const hidden = hiddenBy(watched, [editIn(model, plan, input.id, '0')], were.atNothing(input));
    return hidden === undefined ? [] : [{ phrase: unlessPhrase(check, input), cell: input, hidden }];
  });
}

function inputNamed({ ids, cells, plans }: Model, plan: number, name: string): Cell | undefined {
  const id = ids.get(name);
  return id !== undefined && plans[plan]?.contents[id]?.kind === 'input' ? cells[id] : undefined;
}

/**
 * What may flatter the answer of the plans that are compared: crops that do not take the same time, a crop that the
 * last change made shorter, guesses at 0 that may be more, and hours that are paid and not needed.
 */
export function hiddenMoney(watched: Watched): HiddenMoney[] {
  const differ = timesDiffer(watched);
  return [...differ, ...(differ.length === 0 ? timeChanged(watched) : []), ...unless(watched), ...free(watched)];
}
