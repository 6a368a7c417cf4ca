import type { Cell } from '../../model/cell';
import { wordsOf } from '../../model/choices';
import { isInputInAny, type Model } from '../../model/model';
import type { Values } from '../../model/values';
import type { Format } from '../text/numberFormat';
import { entryTexts } from '../numbers/entryTexts';
import { truthWord } from '../text/truthWord';
import { printedUnit } from '../text/printedUnit';

/** An entry with its value in each plan. */
export interface Figure {
  readonly label: string;
  readonly unit: string;
  /** By plan. */
  readonly values: readonly string[];
}

function valueIn(model: Model, values: readonly Values[], plan: number, cell: Cell, format: Format): string {
  const content = model.plans[plan]?.contents[cell.id];
  const number = values[plan]?.numbers[cell.id];
  if (content?.kind === 'input') return wordsOf(cell, content.number) ?? format.written(content.text);
  if (content?.kind !== 'calculated' || number === undefined || number.isNaN()) return entryTexts.noValue;
  return content.gives === 'truth' ? truthWord(cell, !number.isZero()) : format.value(number, cell.unit);
}

function figureOf(model: Model, values: readonly Values[], cell: Cell, format: Format): Figure {
  const each = model.plans.map((_plan, plan) => valueIn(model, values, plan, cell, format));
  return { label: cell.label, unit: printedUnit(cell.unitText), values: each };
}

/** The numbers that a lesson is computed from: entries that are an input in some plan. */
export function givenFigures(model: Model, values: readonly Values[], format: Format): Figure[] {
  return model.cells
    .filter((cell) => isInputInAny(model.plans, cell.id))
    .map((cell) => figureOf(model, values, cell, format));
}

/** The results of a lesson. */
export function resultFigures(model: Model, values: readonly Values[], format: Format): Figure[] {
  return model.cells
    .filter((cell) => !isInputInAny(model.plans, cell.id))
    .map((cell) => figureOf(model, values, cell, format));
}
