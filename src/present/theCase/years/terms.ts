import { decimal, type Decimal } from '../../../core/number';
import { divide, parts } from '../../../core/ratio';
import { isCurrency, parseUnit, type Unit } from '../../../core/unit';
import type { Cell } from '../../../model/cell';
import type { Model } from '../../../model/model';
import type { Values } from '../../../model/values';
import { mostYears, type YearsAsked } from '../../../trade/years/overYears';
import type { CaseBudget } from '../caseOf';
import { yearsTexts } from './texts';

/** Where the outlay comes from. */
export const outlaySources = ['typed', 'entries'] as const;
export type OutlaySource = (typeof outlaySources)[number];

/** What a person has said of the outlay and of the years. */
export interface YearsTerms {
  readonly source: OutlaySource;
  /** Undefined until someone types one. */
  readonly typed: Decimal | undefined;
  /** Names of entries in money. */
  readonly entries: readonly string[];
  /** Between what the outlay may come to, in money; undefined until someone types them. */
  readonly low: Decimal | undefined;
  readonly high: Decimal | undefined;
  readonly years: number;
  /** In % a year. */
  readonly percent: Decimal;
  readonly left: Decimal;
}

export const yearLimits = { least: 1, most: mostYears };
export const usualYears = 10;
export const usualPercent = decimal(5);

/** Whether a rate in % a year can be used. */
export function canBeRate(percent: Decimal): boolean {
  return percent.isFinite() && percent.gt(-100);
}

/** Why a typed rate cannot be used; undefined where it can. */
export function refusedRate(text: string): string | undefined {
  return canBeRate(decimal(text)) ? undefined : yearsTexts.refusedRate(text);
}

function unitNamed(text: string): Unit {
  const unit = parseUnit(text, new Set());
  if ('code' in unit) throw new Error(`no unit of money: ${text}`);
  return unit;
}

/** The unit of the outlay, money without a time. */
export function outlayUnit({ currency }: Pick<CaseBudget, 'currency'>): Unit {
  return unitNamed(currency);
}

/** The unit of the yearly gain. */
export function gainUnit({ currency }: Pick<CaseBudget, 'currency'>): Unit {
  return unitNamed(`${currency}/year`);
}

function converted(value: Decimal, from: Unit, to: Unit): Decimal {
  const { over, under } = parts(divide(from.scale, to.scale));
  return value.times(over).dividedBy(under);
}

/** An amount in the budget’s unit as money a year. */
export function aYear(amount: Decimal, made: Pick<CaseBudget, 'currency' | 'unit'>): Decimal {
  return converted(amount, made.unit, gainUnit(made));
}

/** The entries that are amounts of the budget’s money, in file order. */
export function moneyEntries({ cells }: Pick<Model, 'cells'>, { currency }: Pick<CaseBudget, 'currency'>): Cell[] {
  return cells.filter(({ unit }) => {
    const kinds = [...(unit?.dimension ?? [])];
    const [only] = kinds;
    return kinds.length === 1 && only?.[0] === currency && isCurrency(only[0]) && only[1] === 1;
  });
}

/** An entry of the outlay, with how much more of it the plan that is taken has. */
export interface OutlayEntry {
  readonly cell: Cell;
  /** NaN where it has no value in one of the plans. */
  readonly more: Decimal;
}

/** What of a partial budget is asked over the years. */
export type YearsBudget = Pick<CaseBudget, 'netChange' | 'unit' | 'currency'>;

/** What a case is asked over the years. */
export interface AskedOf {
  readonly model: Model;
  readonly values: readonly Values[];
  readonly made: YearsBudget;
  /** Indices of the plan that is given up and of the one that is taken. */
  readonly plans: readonly [number, number];
}

/** All entries in money with their difference between the plans. */
export function outlayEntries({ model, values, made, plans: [from, to] }: AskedOf): OutlayEntry[] {
  const number = (plan: number, { id }: Cell): Decimal => values[plan]?.numbers[id] ?? decimal(NaN);
  return moneyEntries(model, made).map((cell) => ({
    cell,
    more: converted(number(to, cell).minus(number(from, cell)), cell.unit!, outlayUnit(made)),
  }));
}

/** The entries of the outlay that a person has named and the model has. */
export function chosenEntries(all: readonly OutlayEntry[], { source, entries }: YearsTerms): OutlayEntry[] {
  return source === 'entries' ? all.filter(({ cell }) => entries.includes(cell.name)) : [];
}

/** The question of the years; undefined while no outlay is given. */
export function yearsAsked(
  made: YearsBudget,
  terms: Pick<YearsTerms, 'source' | 'typed' | 'years' | 'percent' | 'left'>,
  chosen: readonly OutlayEntry[],
): YearsAsked | undefined {
  const isGiven = terms.source === 'typed' ? terms.typed !== undefined : chosen.length > 0;
  if (!isGiven) return undefined;
  const named = chosen.reduce((total, { more }) => total.plus(more), decimal(0));
  return {
    outlay: terms.source === 'typed' ? terms.typed! : named,
    gain: aYear(made.netChange, made),
    years: terms.years,
    rate: terms.percent.dividedBy(100),
    left: terms.left,
  };
}
