import { exact } from '../../core/exact';
import { decimal, sum, type Decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import { currencyOf } from '../../model/budgetFaults';
import type { Cell } from '../../model/cell';
import type { Model } from '../../model/model';
import type { CellError, Values } from '../../model/values';
import { partialBudget, type BudgetLine, type PartialBudget } from '../../trade/partialBudget';

const unknown = decimal(NaN);

export type Kind = Exclude<keyof PartialBudget, 'netChange'>;

/** One of the four parts of a partial budget. */
export interface Section {
  readonly kind: Kind;
  readonly lines: readonly BudgetLine[];
  readonly total: Decimal;
}

/** A budget entry without a value in one or both of the plans, for one reason. */
export interface Unknown {
  readonly cell: Cell;
  /** Indices of the plans. */
  readonly plans: readonly number[];
  readonly error: CellError;
}

/** The partial budget of going from one plan to the other. */
export interface CaseBudget {
  readonly kind: 'made';
  /** Added returns, reduced costs, added costs, reduced returns, in this order. */
  readonly sections: readonly Section[];
  /** Entries of the budget that are the same in both plans. */
  readonly unchanged: readonly Cell[];
  readonly unknown: readonly Unknown[];
  /** NaN where an entry is unknown. */
  readonly netChange: Decimal;
  /** How much more is taken in, and how much more is spent; negative for less. */
  readonly takenIn: Decimal;
  readonly spent: Decimal;
  /** The unit of all lines, money a year, and its currency. */
  readonly unit: Unit;
  readonly currency: string;
}

/** A partial budget, or why the model has none. */
export type Case =
  | CaseBudget
  | { readonly kind: 'one plan' | 'no marks' }
  /** Entries whose units do not allow adding their amounts up. */
  | { readonly kind: 'units'; readonly cells: readonly Cell[] };

const kinds: readonly Kind[] = ['addedReturns', 'reducedCosts', 'addedCosts', 'reducedReturns'];

/** The entries that the budget column marks. */
export function marked({ cells }: Pick<Model, 'cells'>): Cell[] {
  return cells.filter(({ budget }) => budget !== '');
}

/** Whether amounts in two units can be added without conversion. */
export function addsUp(a: Cell, b: Pick<Cell, 'unit'>): boolean {
  return (
    currencyOf(a) !== undefined &&
    currencyOf(a) === currencyOf(b) &&
    a.unit?.scale.over === b.unit?.scale.over &&
    a.unit?.scale.under === b.unit?.scale.under
  );
}

function unknownIn(cells: readonly Cell[], plans: readonly number[], values: readonly Values[]): Unknown[] {
  return cells.flatMap((cell) => {
    const found = plans.flatMap((plan): Unknown[] => {
      const error = values[plan]?.errors.get(cell.id);
      return error === undefined ? [] : [{ cell, plans: [plan], error }];
    });
    const [first, second] = found;
    const isOne = first !== undefined && first.error.message === second?.error.message;
    return isOne ? [{ ...first, plans }] : found;
  });
}

/**
 * The partial budget of going from one plan to the other.
 * @param plan index of the plan that is taken
 * @param against index of the plan that is given up; undefined where the model has one plan
 */
export function caseOf(model: Model, values: readonly Values[], plan: number, against: number | undefined): Case {
  const [to, from] = [values[plan], against === undefined ? undefined : values[against]];
  if (against === undefined || to === undefined || from === undefined) return { kind: 'one plan' };
  const lines = marked(model);
  const [first] = lines;
  if (first === undefined) return { kind: 'no marks' };
  const currency = currencyOf(first);
  const fits = lines.every((line) => addsUp(line, first));
  if (!fits || first.unit === undefined || currency === undefined) return { kind: 'units', cells: lines };
  const { netChange, ...parts } = partialBudget(model.cells, from, to);
  const sections = kinds.map((kind): Section => {
    const ofKind = parts[kind];
    return { kind, lines: ofKind, total: sum(ofKind.map(({ value }) => value)) };
  });
  const total = (kind: Kind): Decimal => sections.find((section) => section.kind === kind)!.total;
  return {
    kind: 'made',
    sections,
    unchanged: lines.filter(({ id }) => exact.compare(to.numbers[id] ?? unknown, from.numbers[id] ?? unknown) === 0),
    unknown: unknownIn(lines, [against, plan], values),
    netChange,
    takenIn: total('addedReturns').minus(total('reducedReturns')),
    spent: total('addedCosts').minus(total('reducedCosts')),
    unit: first.unit,
    currency,
  };
}
