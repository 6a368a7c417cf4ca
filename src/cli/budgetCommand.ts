import { wording } from '../language/wording';
import { partialBudget, type BudgetLine } from '../trade/partialBudget';
import { planOption, setOption, type CommandHelp } from './commandHelp';
import { aligned, jsonNumber, shortNumber, type Outcome } from './outcome';
import type { Session } from './session';
import { UsageError } from './usage';

export const budgetHelp: CommandHelp = {
  name: 'budget',
  takes: 'MODEL.csv',
  summary: wording`what changes between two plans, each thing once`,
  gives: wording`The partial budget of going from the plan after --against to the plan looked at: added returns, reduced costs, added costs, reduced returns, net change.`,
  options: [
    { name: 'against', value: 'NAME', does: wording`the plan to compare with`, needed: true },
    planOption,
    setOption,
  ],
  example: 'budget models/transplant-hire.csv --against "Straight to finishing"',
};

function lineDocument({ cell, value }: BudgetLine): Record<string, unknown> {
  return { name: cell.name, value: jsonNumber(value) };
}

function section(title: string, lines: readonly BudgetLine[]): string[][] {
  return [[title, ''], ...lines.map(({ cell, value }) => [`  ${cell.label}`, shortNumber(value)])];
}

/** What changes between two plans, each thing once. */
export function budgetCommand({ model, values, againstValues }: Session): Outcome {
  if (againstValues === undefined)
    throw new UsageError(wording`option missing: --against. Name the plan to compare with.`);
  const { addedReturns, reducedCosts, addedCosts, reducedReturns, netChange } = partialBudget(
    model.cells,
    againstValues,
    values,
  );
  const unit = model.cells.find(({ budget }) => budget !== '')?.unitText ?? '';
  return {
    document: {
      added_returns: addedReturns.map(lineDocument),
      reduced_costs: reducedCosts.map(lineDocument),
      added_costs: addedCosts.map(lineDocument),
      reduced_returns: reducedReturns.map(lineDocument),
      net_change: jsonNumber(netChange),
      unit,
    },
    table: aligned(
      [
        ...section(wording`added returns`, addedReturns),
        ...section(wording`reduced costs`, reducedCosts),
        ...section(wording`added costs`, addedCosts),
        ...section(wording`reduced returns`, reducedReturns),
        [wording`net change (${unit})`, shortNumber(netChange)],
      ],
      [1],
    ),
    computed: !netChange.isNaN(),
  };
}
