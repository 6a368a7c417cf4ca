import { wording } from '../../language/wording';
import { same } from '../../core/dimension';
import { parseUnit } from '../../core/unit';
import type { Budget, Cell } from '../cell';
import { currencyOf } from '../budgetFaults';
import type { Model } from '../model';
import { field, planOfColumn, type Sheet } from '../sheet';
import { usesOf } from './entries';
import { planColumnsOf } from './plans';
import { freeName } from './rename';
import { groupOfRow, newRow, nextRow, withRowsAfter } from './rows';
import { inTotals } from './totals';

/** How often an amount is paid. */
export const rhythms = ['month', 'year', 'plant', 'board', 'hour'] as const;
export type Rhythm = (typeof rhythms)[number];

/** What an amount is multiplied with, to make it money a year. */
export interface Basis {
  /** The entry that is counted. */
  readonly cell: Cell;
  /** The unit of what is counted: `plant`, `board` or `h`. */
  readonly counted: string;
  /** A formula in that unit a year; for boards the boards themselves. */
  readonly formula: string;
}

/** A line of the yearly budget as a person thinks of it. */
export interface NewBudgetLine {
  readonly label: string;
  readonly side: Exclude<Budget, ''>;
  /** A number's text, in money each time. */
  readonly amount: string;
  readonly rhythm: Rhythm;
  /** What is counted, for amounts a plant, a board or an hour. */
  readonly basis: Basis | undefined;
  /** Names of the plans that it belongs to. */
  readonly plans: readonly string[];
  readonly source: string;
  /** A label for the amount, beside the line's own. */
  readonly amountLabel: string;
}

/** The currency of a model's budget, or undefined where it has none. */
export function budgetCurrency({ cells }: Pick<Model, 'cells'>): string | undefined {
  return cells
    .filter(({ budget }) => budget !== '')
    .map(currencyOf)
    .find((code) => code !== undefined);
}

function measures(cell: Cell, text: string): boolean {
  const unit = parseUnit(text, new Set(['plant', 'head', 'board']));
  return !('code' in unit) && cell.unit !== undefined && same(cell.unit.dimension, unit.dimension);
}

/** How many entries read a cell, in any plan; an entry that is shown large counts as read most. */
function weight({ plans }: Pick<Model, 'plans'>, { id, role }: Cell): number {
  const readers = plans.flatMap((plan) => plan.structure.feeds[id] ?? []);
  return (role === 'headline' ? 1000 : 0) + new Set(readers).size;
}

function byWeight(model: Model, cells: readonly Cell[]): Cell[] {
  return cells.toSorted((a, b) => weight(model, b) - weight(model, a) || a.id - b.id);
}

const countedAs: Readonly<Record<Exclude<Rhythm, 'month' | 'year'>, readonly string[]>> = {
  plant: ['plant', 'head'],
  board: ['board'],
  hour: ['h'],
};

/**
 * What an amount a plant, a board or an hour can be multiplied with, the likeliest first: entries in plants or hours a
 * year, or a week where the model says how many weeks a year has; for boards those of the crop schedule.
 */
export function basesOf(model: Model, rhythm: Rhythm): Basis[] {
  if (rhythm === 'month' || rhythm === 'year') return [];
  const calculated = (cell: Cell): boolean => model.plans.some((plan) => plan.contents[cell.id]?.kind === 'calculated');
  const weeks = model.cells.find((cell) => measures(cell, 'week/year'))?.name;
  return countedAs[rhythm].flatMap((counted) => {
    if (rhythm === 'board') {
      const boards = model.cells.filter((cell) => measures(cell, counted));
      const ofCrop = boards.filter(({ crop }) => crop === 'boards');
      return [
        ...ofCrop,
        ...byWeight(
          model,
          boards.filter((cell) => calculated(cell) && cell.crop !== 'boards'),
        ),
      ].map((cell) => ({ cell, counted, formula: cell.name }));
    }
    const rated = byWeight(
      model,
      model.cells.filter(
        (cell) =>
          (rhythm === 'plant' || calculated(cell)) &&
          cell.role !== 'check' &&
          (measures(cell, `${counted}/year`) ||
            (weeks !== undefined && calculated(cell) && measures(cell, `${counted}/week`))),
      ),
    );
    return rated.map((cell) => {
      const isYearly = measures(cell, `${counted}/year`);
      return { cell, counted, formula: isYearly ? cell.name : `${cell.name} * ${weeks ?? ''}` };
    });
  });
}

/** The unit of an amount, as `EUR/month` or `EUR/board/year`. */
function amountUnit(currency: string, rhythm: Rhythm, basis: Basis | undefined): string {
  if (basis === undefined) return `${currency}/${rhythm}`;
  return rhythm === 'board' ? `${currency}/board/year` : `${currency}/${basis.counted}`;
}

/**
 * A sheet with a line of the budget more: an entry for the amount, a line that makes it money a year in its plans and
 * 0 in the others, and that line in the formulas that add up its side. Both stand behind the side's last line.
 */
export function withBudgetLine(model: Model, line: NewBudgetLine, from?: Sheet): { sheet: Sheet; row: number } {
  const { sheet } = model;
  const currency = budgetCurrency(model) ?? '';
  const last = sheet.rows.findLast((row) => field(row, 'budget') === line.side) ?? sheet.rows.at(-1);
  const row = nextRow(sheet, from);
  const group = last === undefined ? '' : groupOfRow(sheet, last.row);
  const name = freeName(sheet, line.label);
  const amountName = freeName(sheet, wording`${line.label} amount`);
  const formula = line.basis === undefined ? amountName : `${amountName} * ${line.basis.formula}`;
  const own = planColumnsOf(sheet).filter((column) => !line.plans.includes(planOfColumn(column) ?? ''));
  const amount = newRow(row, {
    name: amountName,
    label: line.amountLabel,
    unit: amountUnit(currency, line.rhythm, line.basis),
    formula: line.amount,
    group,
    source: line.source,
  });
  const yearly = newRow(row + 1, {
    name,
    label: line.label,
    unit: `${currency}/year`,
    formula,
    group,
    budget: line.side,
    ...Object.fromEntries(own.map((column) => [column, '0'])),
  });
  const added = withRowsAfter(sheet, last?.row, [amount, yearly]);
  return { sheet: inTotals(added, name, line.side), row };
}

/**
 * The amount of a line of the budget, as `withBudgetLine` gives it one: a number with which the line's formula begins
 * and that no other entry uses. Undefined where there is none.
 */
export function amountOfAlone(
  model: Model,
  { id, row, budget }: Pick<Cell, 'id' | 'row' | 'budget'>,
): Cell | undefined {
  if (budget === '') return undefined;
  const line = model.sheet.rows.find((one) => one.row === row);
  const [, name] = /^(\w+)(?: \*.*)?$/.exec(line === undefined ? '' : field(line, 'formula')) ?? [];
  const amount = name === undefined ? undefined : model.cells[model.ids.get(name) ?? -1];
  if (amount === undefined || amount.id === id) return undefined;
  const isPlain = amount.role === '' && amount.budget === '' && amount.crop === '';
  const isNumber = model.plans.every(({ contents }) => contents[amount.id]?.kind === 'input');
  const isAlone = usesOf(model.sheet, amount.name).every((use) => use.row === row);
  return isPlain && isNumber && isAlone ? amount : undefined;
}
