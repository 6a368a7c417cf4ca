import { isCurrency } from '../../../core/unit';
import type { Cell } from '../../../model/cell';
import { budgetCurrency } from '../../../model/change/budgetLine';
import { currenciesOf } from '../../../model/change/money';
import type { Model } from '../../../model/model';
import type { Option } from '../../text/option';
import { withUnit } from '../../text/withUnit';

/** What can be bought in a quantity: a count, or a measure, once or in a time. */
const counted = /^(?<what>[A-Za-z]+)(?:\/(?:year|month|week|day))?$/;
const noGoods = new Set(['s', 'min', 'h', 'day', 'week', 'month', 'year', 'thousand', 'K', 'm', 'cm', 'mm', 'km']);

/** The thing that a quantity counts, by its unit: `plug` of plug/year; undefined where it is no quantity of goods. */
export function goodsOf({ unitText }: Pick<Cell, 'unitText'>): string | undefined {
  const what = counted.exec(unitText)?.groups?.what;
  return what === undefined || noGoods.has(what) || isCurrency(what) ? undefined : what;
}

function isNumber(model: Model, { id, role }: Cell): boolean {
  const gives = model.plans.map(({ contents }) => contents[id]);
  return (
    role !== 'check' &&
    gives.every((one) => one?.kind === 'input' || (one?.kind === 'calculated' && one.gives === 'number'))
  );
}

/** The money of a price, for one of some goods: `GBP/plug`; blank where the model has no money. */
export function priceUnit(model: Model, quantity: Pick<Cell, 'unitText'>): string {
  const currency = budgetCurrency(model) ?? currenciesOf(model.sheet)[0];
  const goods = goodsOf(quantity);
  return currency === undefined || goods === undefined ? '' : `${currency}/${goods}`;
}

/**
 * The entries that say how much is bought; for a price that stands already, those of its goods. What is worked out, and
 * what stands under the price's own heading, comes first.
 */
export function quantities(model: Model, price: Cell | undefined): Cell[] {
  const isCalculated = ({ id }: Cell): boolean =>
    model.plans.some(({ contents }) => contents[id]?.kind === 'calculated');
  const rank = (cell: Cell): number => (cell.group === price?.group ? 2 : 0) + (isCalculated(cell) ? 1 : 0);
  const all = model.cells.filter(
    (cell) => goodsOf(cell) !== undefined && isNumber(model, cell) && cell.id !== price?.id,
  );
  const fitting = price === undefined ? all : all.filter((cell) => isPriceOf(price, cell));
  return fitting.toSorted((a, b) => rank(b) - rank(a));
}

function isPriceOf({ unitText }: Cell, quantity: Cell): boolean {
  return unitText.split('/')[1] === goodsOf(quantity);
}

/** The prices that may become prices by quantity: money for one of some goods, the same formula in every plan. */
export function prices(model: Model): Cell[] {
  return model.cells.filter((cell) => {
    const [money = '', what = '', ...more] = cell.unitText.split('/');
    const isShared = model.plans.every(({ contents }) => contents[cell.id]?.own === false);
    const isEach = isCurrency(money) && goodsOf({ unitText: what }) !== undefined && more.length === 0;
    return isEach && isShared && isNumber(model, cell);
  });
}

/** Entries to choose from, each with its unit. */
export function cellOptions(cells: readonly Cell[], nameOf: (cell: Cell) => string): Option<string>[] {
  return cells.map((cell) => ({ value: cell.name, label: withUnit({ ...cell, label: nameOf(cell) }) }));
}
