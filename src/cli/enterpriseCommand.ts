import { wording } from '../language/wording';
import { decimal, type Decimal } from '../core/number';
import { nearest } from '../core/nearest';
import { onePlanOf, type ForPlants, type OnePlan } from '../present/plans/onePlan/onePlan';
import { yieldShares } from '../present/plans/onePlan/sentences';
import { onePlanLines } from '../present/plans/onePlan/table';
import { onePlanTexts } from '../present/plans/onePlan/texts';
import { marked } from '../present/theCase/caseOf';
import { breakevenPrice, type CountedByHand, type PlanLine } from '../trade/enterpriseBudget';
import type { Arguments } from './arguments';
import { planOption, setOption, type CommandHelp } from './commandHelp';
import { aligned, jsonNumber, shortNumber, type Outcome } from './outcome';
import { valuesOfAll, type Session } from './session';
import { UsageError } from './usage';

export const enterpriseHelp: CommandHelp = {
  name: 'enterprise',
  takes: 'MODEL.csv',
  summary: wording`returns, costs and breakeven of one plan, of a year and of a plant`,
  gives: wording`The enterprise budget of one plan: returns, variable and fixed costs, both margins, what a plant costs by kind, and the price and the plants a year that cover all costs. A line is variable where it rises with the plants; --variable and --fixed count lines otherwise.`,
  options: [
    { name: 'variable', value: 'NAMES', does: wording`lines counted as rising with the plants, with commas` },
    { name: 'fixed', value: 'NAMES', does: wording`lines counted as staying where they are, with commas` },
    planOption,
    setOption,
  ],
  example: 'enterprise models/transplant-hire.csv --plan "Nursery first"',
};

type Given = Arguments['options'];

function namesIn({ model }: Session, options: Given, option: 'variable' | 'fixed'): string[] {
  const names = (options[option] ?? '').split(',').filter((name) => name !== '');
  const lines = marked(model).map(({ name }) => name);
  const unknown = names.find((name) => !lines.includes(name));
  if (unknown === undefined) return names;
  const near = nearest(unknown, lines);
  const fix = near === undefined ? wording`The budget has ${lines.join(', ')}.` : wording`Did you mean ${near}?`;
  throw new UsageError(wording`no line of the budget in --${option}: ${unknown}. ${fix}`);
}

/** What the options count otherwise than the rule. */
function byHandIn(session: Session, { options }: Arguments): CountedByHand {
  const [rising, staying] = [namesIn(session, options, 'variable'), namesIn(session, options, 'fixed')];
  const both = rising.find((name) => staying.includes(name));
  if (both === undefined) return { rising, staying };
  throw new UsageError(wording`variable and fixed at once: ${both}. Name it in one of --variable and --fixed.`);
}

/** A line with its amount of a year and, where plants are counted, of a plant. */
function lineDocument({ cell, amount, byHand }: PlanLine, forPlants: ForPlants | undefined): Record<string, unknown> {
  return {
    name: cell.name,
    value: jsonNumber(amount),
    each: jsonNumber(forPlants && amount.dividedBy(forPlants.plants)),
    by_hand: byHand,
  };
}

/** A number that may have no end, as it has where nothing is sold. */
function finite(value: Decimal | undefined): string | null {
  return value?.isFinite() === true ? jsonNumber(value) : null;
}

function plantsDocument(forPlants: ForPlants | undefined): Record<string, unknown> {
  const needs = forPlants?.needs;
  const shares = forPlants === undefined ? [] : yieldShares;
  return {
    plants: jsonNumber(forPlants?.plants),
    unit_each: forPlants?.each.text ?? null,
    price: jsonNumber(needs?.price),
    variable_cost_each: jsonNumber(needs?.variable),
    breakeven_price: finite(forPlants && breakevenPrice(forPlants.needs, forPlants.plants)),
    breakeven_plants: finite(needs?.plants),
    yields: shares.map((share) => {
      const plants = forPlants!.plants.times(share);
      return { share, plants: jsonNumber(plants), breakeven_price: finite(breakevenPrice(forPlants!.needs, plants)) };
    }),
  };
}

function document({ plan }: Session, { budget, unit, forPlants }: OnePlan): Record<string, unknown> {
  const lines = (list: readonly PlanLine[]) => list.map((line) => lineDocument(line, forPlants));
  const { totals } = budget;
  return {
    plan: plan.name,
    unit: unit.text,
    returns: lines(budget.returns),
    other_returns: lines(budget.otherReturns),
    variable_costs: lines(budget.variable),
    fixed_costs: lines(budget.fixed),
    total_returns: jsonNumber(totals.returns.plus(totals.otherReturns)),
    total_variable_costs: jsonNumber(totals.variable),
    total_fixed_costs: jsonNumber(totals.fixed),
    margin_over_variable_costs: jsonNumber(budget.overVariable),
    margin: jsonNumber(budget.margin),
    ...plantsDocument(forPlants),
  };
}

function breakevenLines(forPlants: ForPlants | undefined): string {
  if (forPlants === undefined) return `\n${onePlanTexts.noPlants}\n`;
  const { plants, needs, each, aYear } = forPlants;
  const lines = [
    [wording`price today`, shortNumber(needs.price), each.text],
    [wording`price that covers all costs`, shortNumber(breakevenPrice(needs, plants)), each.text],
    [wording`plants a year today`, shortNumber(plants), aYear.text],
    [wording`plants a year that cover all costs`, shortNumber(needs.plants), aYear.text],
  ];
  const yields = yieldShares.map((share) => {
    const some = plants.times(share);
    return [shortNumber(some), `${shortNumber(decimal(share).times(100))} %`, shortNumber(breakevenPrice(needs, some))];
  });
  const head = [onePlanTexts.yieldHeads.yield, onePlanTexts.yieldHeads.share, onePlanTexts.yieldHeads.price];
  return `\n${aligned(lines, [1])}\n${aligned([head, ...yields], [0, 1, 2])}`;
}

function people(one: OnePlan): string {
  const { forPlants, unit } = one;
  const plants = forPlants?.plants;
  const rows = onePlanLines(one, ({ label }) => label).map(({ kind, name, amount, counted }) => {
    const amounts = amount === undefined ? [] : [amount, ...(plants ? [amount.dividedBy(plants)] : [])];
    const said = counted?.byHand === true ? [...(plants ? [] : ['']), onePlanTexts.byHand] : [];
    return [`${kind === 'line' ? '  ' : ''}${name}`, ...amounts.map(shortNumber), ...said];
  });
  const head = ['', unit.text, ...(forPlants ? [forPlants.each.text] : [])];
  return `${aligned([head, ...rows], [1, 2])}${breakevenLines(forPlants)}`;
}

/** The enterprise budget of the plan looked at. */
export function enterpriseCommand(session: Session, given: Arguments): Outcome {
  const { model, plan } = session;
  if (marked(model).length === 0) {
    throw new UsageError(wording`no yearly budget: the column budget marks no entry. Mark returns and costs.`);
  }
  const one = onePlanOf(model, valuesOfAll(session), model.plans.indexOf(plan), byHandIn(session, given));
  if (one === undefined) return { document: { plan: plan.name, margin: null }, table: '', computed: false };
  return { document: document(session, one), table: people(one), computed: one.budget.margin.isFinite() };
}
