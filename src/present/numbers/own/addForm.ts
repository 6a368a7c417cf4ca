import { wording } from '../../../language/wording';
import type { Cell } from '../../../model/cell';
import { basesOf, budgetCurrency, rhythms, type Basis, type Rhythm } from '../../../model/change/budgetLine';
import type { Model } from '../../../model/model';
import type { Values } from '../../../model/values';
import { listed, plainly, say, sentences, type Phrase } from '../../text/phrase';
import { spoken } from '../../text/spokenNumber';
import { withUnit } from '../../text/withUnit';
import type { Format } from '../../text/numberFormat';
import type { Option } from '../../text/option';

/** Words of the forms that add entries. */
export const addFormTexts = {
  label: wording`What is it?`,
  labelPlaceholder: wording`Extra rent`,
  side: wording`It is`,
  sides: { cost: wording`a cost`, return: wording`a return` },
  amount: wording`How much`,
  howOften: wording`How often`,
  counted: wording`What is counted`,
  plans: wording`In which plans`,
  add: wording`Add it`,
  close: wording`Leave it`,
  noLabel: wording`Say in a word or two what it is.`,
  noAmount: wording`Enter how much.`,
  noPlan: wording`Tick at least one plan.`,
  noTotal: (side: 'cost' | 'return') =>
    side === 'cost'
      ? wording`This model adds up no costs of a year, so a line of its own would change nothing. Add an ordinary entry instead, and name it in the formula that it belongs to.`
      : wording`This model adds up no returns of a year, so a line of its own would change nothing. Add an ordinary entry instead, and name it in the formula that it belongs to.`,
  amountLabel: (label: string) => wording`${label}, amount`,
  unit: wording`Unit`,
  unitHint: wording`as in EUR/year, kg or plant/week; blank for a plain number`,
  formula: wording`Number or formula`,
  noFormula: wording`Enter a number, or a formula in names.`,
} as const;

const rhythmLabels: Readonly<Record<Rhythm, string>> = {
  month: wording`a month`,
  year: wording`a year`,
  plant: wording`for each plant`,
  board: wording`for each board and year`,
  hour: wording`for each hour`,
};

/** How often an amount can be paid in a model; what it does not count is not offered. */
export function rhythmOptions(model: Model): Option<Rhythm>[] {
  const offered = rhythms.filter(
    (rhythm) => rhythm === 'month' || rhythm === 'year' || basesOf(model, rhythm).length > 0,
  );
  return offered.map((rhythm) => {
    const isHead = rhythm === 'plant' && basesOf(model, rhythm)[0]?.counted === 'head';
    return { value: rhythm, label: isHead ? wording`for each head` : rhythmLabels[rhythm] };
  });
}

/** What is counted, as it is offered: `Finished plants a year, plant/year`. */
export function basisText({ cell }: Pick<Basis, 'cell'>): string {
  return withUnit(cell);
}

/** The unit behind the amount that is asked for. */
export function amountCurrency(model: Model): string {
  return budgetCurrency(model) ?? '';
}

interface LineAdded {
  readonly model: Model;
  readonly values: readonly Values[];
  /** The line, in money a year. */
  readonly line: Cell;
  /** Names of its plans. */
  readonly plans: readonly string[];
  /** The sums that it has become a part of. */
  readonly totals: readonly Cell[];
}

/** `In the budget of Nursery first: 3,600 USD a year. Costs and everything made from it follow.` */
export function lineAddedText({ model, values, line, plans, totals }: LineAdded, format: Format): Phrase {
  const amounts = model.plans.flatMap(({ name }, p) => {
    const value = values[p]?.numbers[line.id];
    return value === undefined || !plans.includes(name) ? [] : [{ name, text: spoken(value, line.unit, format) }];
  });
  const same = new Set(amounts.map(({ text }) => text)).size === 1 ? amounts[0]?.text : undefined;
  const each = amounts.flatMap(({ name, text }, i) => [
    ...plainly(i === 0 ? '' : '; '),
    ...say`${text} in ${plainly(name)}`,
  ]);
  const what = same === undefined ? each : say`${same}`;
  return sentences(whereSentence(line.label, what, plans, model.plans.length), followSentence(totals));
}

/** @param of how many plans the model has */
function whereSentence(label: string, what: Phrase, plans: readonly string[], of: number): Phrase {
  if (of === 1) return say`${label}. In the budget: ${what}.`;
  if (plans.length === of) return say`${label}. In the budget of every plan: ${what}.`;
  return say`${label}. In the budget of ${listed(plans)}: ${what}.`;
}

function followSentence(totals: readonly Cell[]): Phrase {
  if (totals.length === 0) return [];
  const names = listed(totals.map(({ label }) => label));
  return totals.length === 1
    ? say`${names} and everything made from it follow.`
    : say`${names} and everything made from them follow.`;
}

/** What was added, and that it waits to be used. */
export function entryAddedText(label: string): Phrase {
  return say`${label} is added. Nothing is made from it yet: name it in a formula.`;
}
