import { freeName } from '../../model/change/rename';
import { newRow, nextRow } from '../../model/change/rows';
import type { Model } from '../../model/model';
import type { Sheet } from '../../model/sheet';
import { marked } from './caseOf';
import { budgetTexts } from './budgetTexts';

/** A model's text with one more entry, by its index among the cells. */
export interface WithNetChange {
  readonly sheet: Sheet;
  readonly result: number;
}

/** Longest formula allowed, in characters. */
const longestFormula = 10_000;

/** A sum of terms, added in halves so that brackets are not nested deeply. */
function added(terms: readonly string[]): string {
  if (terms.length < 2) return terms[0] ?? '0';
  const middle = Math.ceil(terms.length / 2);
  return `(${added(terms.slice(0, middle))} + ${added(terms.slice(middle))})`;
}

/**
 * The model's text with an added entry for the budget's returns less its costs, so that studies can use it as any
 * result: its difference between two plans is the net change of their partial budget. Undefined where a formula cannot
 * name so many lines.
 */
export function withNetChange(model: Model): WithNetChange | undefined {
  const { sheet, cells } = model;
  const names = (budget: string): string[] =>
    marked(model)
      .filter((cell) => cell.budget === budget)
      .map(({ name }) => name);
  const formula = `${added(names('return'))} - ${added(names('cost'))}`;
  if (formula.length > longestFormula) return undefined;
  const unit = marked(model)[0]?.unitText ?? '';
  const texts = { name: freeName(sheet, 'net change'), label: budgetTexts.netChange, unit, formula };
  const row = newRow(nextRow(sheet), texts);
  return { sheet: { ...sheet, rows: [...sheet.rows, row] }, result: cells.length };
}
