import type { Decimal } from '../../core/number';
import { isQuantity, type Cell } from '../../model/cell';
import { wordsOf } from '../../model/choices';
import type { Model } from '../../model/model';
import type { Values } from '../../model/values';
import type { Format } from '../text/numberFormat';
import { truthWord } from '../text/truthWord';
import { commonTexts } from '../text/commonTexts';

/** Two plans side by side. */
export interface PlanPair {
  readonly model: Model;
  readonly values: readonly Values[];
  /** Indices of the plan that is given up and of the one that is taken. */
  readonly plans: readonly [number, number];
  /** Gives each entry a name of its own. */
  readonly nameOf: (cell: Cell) => string;
  readonly format: Format;
}

/** An entry's value in each of two plans. */
export interface ComparedEntry {
  readonly cell: Cell;
  readonly name: string;
  readonly values: readonly string[];
  /** The numbers behind them; undefined for words. */
  readonly numbers: readonly (Decimal | undefined)[];
}

function numberIn({ model, values }: PlanPair, plan: number, cell: Cell): Decimal | undefined {
  const content = model.plans[plan]?.contents[cell.id];
  const isTruth = content?.kind === 'calculated' && content.gives === 'truth';
  return isTruth || !isQuantity(cell) ? undefined : values[plan]?.numbers[cell.id];
}

function shownIn({ model, values, format }: PlanPair, plan: number, cell: Cell): string {
  const content = model.plans[plan]?.contents[cell.id];
  const number = values[plan]?.numbers[cell.id];
  if (content?.kind === 'input') return wordsOf(cell, content.number) ?? format.written(content.text);
  if (content?.kind !== 'calculated' || number === undefined || number.isNaN()) return commonTexts.noValue;
  return content.gives === 'truth' ? truthWord(cell, !number.isZero()) : format.value(number, cell.unit);
}

/** Whether an entry has different values in the two plans. */
export function differs({ values, plans: [a, b] }: PlanPair, { id }: Cell): boolean {
  const [one, other] = [values[a]?.numbers[id], values[b]?.numbers[id]];
  return one !== undefined && other !== undefined && !one.eq(other) && !(one.isNaN() && other.isNaN());
}

export function comparedIn(beside: PlanPair, cell: Cell): ComparedEntry {
  return {
    cell,
    name: beside.nameOf(cell),
    values: beside.plans.map((plan) => shownIn(beside, plan, cell)),
    numbers: beside.plans.map((plan) => numberIn(beside, plan, cell)),
  };
}
