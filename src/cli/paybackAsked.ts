import { wording } from '../language/wording';
import { nearest } from '../core/nearest';
import { decimal, sum, type Decimal } from '../core/number';
import { problem, type Problem } from '../core/problem';
import { currencyOf } from '../model/budgetFaults';
import type { Cell } from '../model/cell';
import { cellNamed } from '../model/model';
import { errorSentence } from '../model/values';
import { marked } from '../present/theCase/caseOf';
import type { OutlayRange } from '../present/theCase/years/outlayRange';
import {
  aYear,
  canBeRate,
  moneyEntries,
  outlayEntries,
  usualPercent,
  usualYears,
  yearLimits,
  type AskedOf,
  type YearsBudget,
} from '../present/theCase/years/terms';
import { yearsTexts } from '../present/theCase/years/texts';
import { partialBudget } from '../trade/partialBudget';
import type { YearsAsked } from '../trade/years/overYears';
import type { Arguments } from './arguments';
import { numberOf, type Session } from './session';
import { UsageError } from './usage';
import { wholeOption } from './wholeOption';

/** What `payback` is asked, and of which budget. */
export interface PaybackAsked {
  readonly asked: YearsAsked;
  readonly made: YearsBudget;
  /** In % a year, as it was typed. */
  readonly percent: Decimal;
  readonly range: OutlayRange | undefined;
  /** Why an amount is not known today. */
  readonly unknown: readonly Problem[];
}

type Options = Arguments['options'];
type Sides = readonly [from: Session['values'], to: Session['values']];

function sidesOf({ values, againstValues }: Session): Sides {
  if (againstValues === undefined)
    throw new UsageError(wording`option missing: --against. Name the plan to compare with.`);
  return [againstValues, values];
}

/** The yearly net change with its unit and currency. */
function budgetOf({ model }: Session, [from, to]: Sides): YearsBudget {
  const [first] = marked(model);
  const currency = first && currencyOf(first);
  if (first?.unit === undefined || currency === undefined) {
    throw new UsageError(
      wording`no yearly budget: the column budget marks no entry in money a year. Mark returns and costs.`,
    );
  }
  return { netChange: partialBudget(model.cells, from, to).netChange, unit: first.unit, currency };
}

/** The entries that `--bought` names. */
function boughtIn({ model }: Session, made: YearsBudget, text: string): Cell[] {
  const money = moneyEntries(model, made);
  return text.split(',').map((name) => {
    const cell = cellNamed(model, name);
    if (cell !== undefined && money.includes(cell)) return cell;
    const names = money.map((entry) => entry.name);
    const near = nearest(name, names);
    const there = names.length === 0 ? wording`The model has none.` : wording`The model has ${names.join(', ')}.`;
    const fix = near === undefined ? there : wording`Did you mean ${near}?`;
    throw new UsageError(wording`no amount in ${made.currency} in --bought: ${name}. ${fix}`);
  });
}

/** How much more of the bought entries the plan has that is taken. */
function outlayOf(session: Session, sides: Sides, made: YearsBudget, options: Options): Decimal {
  const { outlay, bought } = options;
  if ((outlay === undefined) === (bought === undefined)) {
    throw new UsageError(
      outlay === undefined
        ? wording`no outlay: give either --outlay, an amount, or --bought, entries of the model.`
        : wording`two outlays: give either --outlay, an amount, or --bought, entries of the model.`,
    );
  }
  if (bought === undefined) return numberOf(outlay, 'outlay')!;
  const chosen = boughtIn(session, made, bought);
  const of: AskedOf = { model: session.model, values: sides, made, plans: [0, 1] };
  const more = outlayEntries(of).filter(({ cell }) => chosen.includes(cell));
  return sum(more.map((entry) => entry.more));
}

function rangeOf(options: Options, outlay: Decimal): OutlayRange | undefined {
  const low = numberOf(options['outlay-low'], 'outlay-low');
  const high = numberOf(options['outlay-high'], 'outlay-high');
  if ((low === undefined) !== (high === undefined)) {
    throw new UsageError(wording`half a range of the outlay: give both --outlay-low and --outlay-high.`);
  }
  if (low === undefined || high === undefined) return undefined;
  if (!low.lt(high)) throw new UsageError(wording`--outlay-low not below --outlay-high: ${low.toString()}. Swap them.`);
  if (outlay.lt(low) || outlay.gt(high)) {
    throw new UsageError(wording`outlay outside its range: ${outlay.toString()}. Widen --outlay-low or --outlay-high.`);
  }
  return { low, high };
}

function percentOf(options: Options): Decimal {
  const percent = numberOf(options['rate'], 'rate') ?? usualPercent;
  if (canBeRate(percent)) return percent;
  throw new UsageError(`--rate: ${yearsTexts.refusedRate(percent.toString())}`);
}

/** Why the lines of the budget, or what is bought, have no value today. */
function unknownIn(session: Session, bought: string | undefined): Problem[] {
  const { model, plan, against, values, againstValues } = session;
  const names = bought?.split(',') ?? [];
  const cells = model.cells.filter(({ budget, name }) => budget !== '' || names.includes(name));
  return [
    { of: plan, known: values },
    { of: against, known: againstValues },
  ].flatMap(({ of, known }) =>
    cells.flatMap(({ id, row, name }) => {
      const error = known?.errors.get(id);
      if (error === undefined) return [];
      const sentence = wording`${errorSentence(error, id, model.cells)} at today’s values in plan ${of?.name ?? ''}.`;
      return [problem(error.code, sentence, { row, column: '', cell: name })];
    }),
  );
}

/**
 * What the options ask.
 * @throws UsageError for an option that cannot be used
 */
export function paybackAsked(session: Session, { options }: Arguments): PaybackAsked {
  const sides = sidesOf(session);
  const made = budgetOf(session, sides);
  const outlay = outlayOf(session, sides, made, options);
  const percent = percentOf(options);
  const asked: YearsAsked = {
    outlay,
    gain: aYear(made.netChange, made),
    years: wholeOption(options, 'years', yearLimits) ?? usualYears,
    rate: percent.dividedBy(100),
    left: numberOf(options['left'], 'left') ?? decimal(0),
  };
  return { asked, made, percent, range: rangeOf(options, outlay), unknown: unknownIn(session, options['bought']) };
}
