import { wording } from '../language/wording';
import type { Problem } from '../core/problem';
import { readModel } from '../files/readModel';
import type { Cell } from '../model/cell';
import { givesTruth, type Model } from '../model/model';
import { evaluatePlan } from '../model/values';
import type { Arguments } from './arguments';
import type { CommandHelp } from './commandHelp';
import { aligned, inLines, jsonFault, jsonText, type Finished } from './outcome';
import { unmetIn, type ComparedSide } from './session';

export const checkHelp: CommandHelp = {
  name: 'check',
  takes: 'MODEL.csv',
  summary: wording`faults, units and checks of a model, in all plans`,
  gives: wording`How many entries and plans a model has, whether each check holds in each plan, and the unit of each entry. Faults, and the checks that do not hold, are told on standard error. Ends with 1 where there is any.`,
  options: [],
  example: 'check models/transplant-hire.csv',
};

/** A check in one plan; null where it is neither true nor false. */
interface Held {
  readonly plan: string;
  readonly name: string;
  readonly holds: boolean | null;
}

function heldIn({ plan, values }: ComparedSide, { id, name }: Cell): Held {
  const isKnown = givesTruth(plan, id) && !values.errors.has(id);
  return { plan: plan.name, name, holds: isKnown ? values.numbers[id]?.eq(1) === true : null };
}

function heldWord({ holds }: Held): string {
  if (holds === null) return wording`not computed`;
  return holds ? wording`holds` : wording`does not hold`;
}

function checkRows({ plans }: Model, checks: readonly Cell[], held: readonly Held[]): string[][] {
  if (checks.length === 0) return [];
  const words = (name: string): string[] => held.filter((check) => check.name === name).map(heldWord);
  return [[wording`check`, ...plans.map(({ name }) => name)], ...checks.map(({ name }) => [name, ...words(name)])];
}

/** How many entries, plans and faults a model has. */
function countsOf({ cells, plans, faults }: Model): string[] {
  return [
    cells.length === 1 ? wording`1 entry` : wording`${cells.length} entries`,
    plans.length === 1 ? wording`1 plan` : wording`${plans.length} plans`,
    faults.length === 1 ? wording`1 fault` : wording`${faults.length} faults`,
  ];
}

function people(model: Model, checks: readonly Cell[], held: readonly Held[]): string {
  const units = [[wording`entry`, wording`unit`], ...model.cells.map(({ name, unitText }) => [name, unitText])];
  const tables = [checkRows(model, checks, held), units].filter((rows) => rows.length > 0);
  return [`${countsOf(model).join(', ')}\n`, ...tables.map((rows) => aligned(rows, []))].join('\n');
}

function document(model: Model, held: readonly Held[]): Record<string, unknown> {
  return {
    entries: model.cells.length,
    plans: model.plans.map(({ name }) => name),
    faults: model.faults.map(jsonFault),
    checks: held,
    units: model.cells.map(({ name, unitText }) => ({ name, unit: unitText })),
  };
}

/** What a model holds and what is wrong with it, in every plan. */
export function checkCommand({ json }: Arguments, bytes: Uint8Array): Finished {
  const { model, refused } = readModel(bytes);
  const sides: ComparedSide[] = refused ? [] : model.plans.map((plan) => ({ plan, values: evaluatePlan(plan) }));
  const checks = model.cells.filter(({ role }) => role === 'check');
  const held = sides.flatMap((side) => checks.map((check) => heldIn(side, check)));
  const unmet: Problem[] = sides.flatMap((side) => unmetIn(model, side));
  const isSound = model.faults.length === 0 && held.every(({ holds }) => holds === true);
  const shown = refused ? { ...model, plans: [] } : model;
  return {
    output: json ? jsonText(document(shown, held)) : people(shown, checks, held),
    messages: inLines([...model.faults, ...model.notices, ...unmet]),
    status: isSound ? 0 : 1,
  };
}
