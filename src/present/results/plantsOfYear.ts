import { decimal, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { basesOf } from '../../model/change/budgetLine';
import { readsOf } from '../../model/links/reads';
import { cellNamed, type Model } from '../../model/model';
import type { Values } from '../../model/values';

/** The plants of a year by plan. */
interface PlantsOfYear {
  /** The entry that counts them, a year or a week. */
  readonly cell: Cell;
  /** What one is called: `plant` or `head`. */
  readonly noun: string;
  /** By plan; NaN where one has none. */
  readonly counts: readonly Decimal[];
}

/** Whether a return of any plan is worked out from an entry at first hand. */
function isSold({ cells, plans }: Model, entry: number): boolean {
  return cells.some(
    ({ id, budget }) => budget === 'return' && plans.some(({ contents }) => readsOf(contents[id]).includes(entry)),
  );
}

/**
 * The plants of a year in every plan: those that a return counts where there are such, as more are sown or set out than
 * are sold; undefined where the model does not count them.
 */
export function plantsOfYear(model: Model, values: readonly Values[]): PlantsOfYear | undefined {
  const bases = basesOf(model, 'plant').filter(
    ({ cell, counted }) => cell.unitText === `${counted}/year` || cell.unitText === `${counted}/week`,
  );
  const basis = bases.find(({ cell }) => isSold(model, cell.id)) ?? bases[0];
  if (basis === undefined) return undefined;
  // The formula is a name, or a name times the weeks of a year.
  const factors = basis.formula.split(' * ').map((name) => cellNamed(model, name)?.id ?? -1);
  const counts = values.map(({ numbers }) =>
    factors.reduce((product, id) => product.times(numbers[id] ?? decimal(NaN)), decimal(1)),
  );
  return { cell: basis.cell, noun: basis.counted, counts };
}
