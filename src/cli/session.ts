import { wording } from '../language/wording';
import { isNumberText, type Decimal } from '../core/number';
import { problem, type Problem } from '../core/problem';
import type { Cell } from '../model/cell';
import { refusedChoice } from '../model/choices';
import { edit, editIn } from '../model/edit';
import { cellNamed, givesTruth, type Model, type Plan } from '../model/model';
import { isNumber, readNumber } from '../model/readNumber';
import { question, type Question } from '../model/response';
import { errorSentence, evaluatePlan, type Values } from '../model/values';
import { lever, unitOf, type Lever } from '../model/view';
import { nearest } from '../core/nearest';
import type { Arguments } from './arguments';
import { UsageError } from './usage';

/** A model with the plans that a command looks at, evaluated. */
export interface Session {
  readonly model: Model;
  readonly plan: Plan;
  readonly against: Plan | undefined;
  readonly values: Values;
  readonly againstValues: Values | undefined;
  /** The model's faults; what `--set` takes outside a range is none. */
  readonly faults: readonly Problem[];
  /** The checks that do not hold in the plans looked at. */
  readonly unmet: readonly Problem[];
}

function planNamed(model: Model, name: string): Plan {
  const plan = model.plans.find((candidate) => candidate.name === name);
  if (plan !== undefined) return plan;
  throw new UsageError(
    wording`plan not known: ${name}. The model has ${model.plans.map((one) => one.name).join(', ')}.`,
  );
}

/** The cell of a name that an option gives. */
function cellOf(model: Model, name: string, option: string): Cell {
  const cell = cellNamed(model, name);
  if (cell !== undefined) return cell;
  const near = nearest(name, model.ids.keys());
  const fix = near === undefined ? wording`Name a cell of the model.` : wording`Did you mean ${near}?`;
  throw new UsageError(wording`name not known in --${option}: ${name}. ${fix}`);
}

/** A number that an option gives, or a fallback where it is left out. */
export function numberOf(text: string | undefined, option: string): Decimal | undefined {
  if (text === undefined) return undefined;
  const number = readNumber(text);
  if (!isNumber(number)) throw new UsageError(`--${option}: ${number.message}`);
  return number;
}

function withSetting(model: Model, planName: string, setting: string): { model: Model; row: number } {
  const [, name = '', text = ''] = /^([^=]*)=(.*)$/s.exec(setting) ?? [];
  if (!isNumberText(text)) throw new UsageError(wording`--set not readable: ${setting}. Write name=number.`);
  const number = numberOf(text, 'set');
  const cell = cellOf(model, name, 'set');
  const plan = planNamed(model, planName);
  if (plan.contents[cell.id]?.kind !== 'input') {
    throw new UsageError(
      wording`--set of a cell that is no input in plan ${planName}: ${name}. Set the inputs that it is made from.`,
    );
  }
  const refused = number && refusedChoice(cell, number, text);
  if (refused !== undefined) throw new UsageError(wording`--set of ${name}: ${refused.message}`);
  return { model: edit(model, editIn(model, plan, cell.id, text)).model, row: cell.row };
}

function settle(
  model: Model,
  planName: string,
  settings: readonly string[],
): { model: Model; faults: readonly Problem[] } {
  let current = model;
  const rows = new Set<number>();
  for (const setting of settings) {
    const next = withSetting(current, planName, setting);
    current = next.model;
    rows.add(next.row);
  }
  const faults = current.faults.filter(({ code, where }) => code !== 'range-value' || !rows.has(where.row));
  return { model: current, faults };
}

/** A plan that is looked at, with its values. */
export type ComparedSide = Pick<Session, 'plan' | 'values'>;

/** The plan looked at, and the one that it is compared with. */
function sidesOf(looked: Pick<Session, 'plan' | 'values' | 'against' | 'againstValues'>): ComparedSide[] {
  const { plan, values, against, againstValues } = looked;
  const own = { plan, values };
  return against === undefined || againstValues === undefined ? [own] : [own, { plan: against, values: againstValues }];
}

/** The checks that do not hold in a plan, those that cannot be computed among them; one of a number is a fault. */
export function unmetIn({ cells }: Model, { plan, values }: ComparedSide): Problem[] {
  const isTruth = (id: number): boolean => givesTruth(plan, id) || values.errors.has(id);
  const failing = cells.filter(({ id, role }) => role === 'check' && isTruth(id) && values.numbers[id]?.eq(1) !== true);
  return failing.map(({ id, row, name, label }) => {
    const error = values.errors.get(id);
    const reason = error === undefined ? label : errorSentence(error, id, cells);
    return problem('check', wording`check does not hold in plan ${plan.name}: ${reason}`, {
      row,
      column: 'role',
      cell: name,
    });
  });
}

/**
 * Makes a model ready for a command.
 * @throws UsageError for a plan or a setting that the model does not have
 */
export function openSession(opened: Model, { plan: planName, against: againstName, set }: Arguments): Session {
  const lastPlan = opened.plans.at(-1)?.name ?? '';
  const name = planNamed(opened, planName ?? lastPlan).name;
  const { model, faults } = settle(opened, name, set);
  const plan = planNamed(model, name);
  const against = againstName === undefined ? undefined : planNamed(model, againstName);
  const values = evaluatePlan(plan);
  const againstValues = against && evaluatePlan(against);
  const looked = { plan, against, values, againstValues };
  return { model, ...looked, faults, unmet: sidesOf(looked).flatMap((side) => unmetIn(model, side)) };
}

/** The values of every plan of a session's model, of which those looked at are known. */
export function valuesOfAll({ model, plan, against, values, againstValues }: Session): Values[] {
  return model.plans.map((one) => {
    const known = one === plan ? values : one === against ? againstValues : undefined;
    return known ?? evaluatePlan(one);
  });
}

/** Why the cell that `--result` names has no value today, by plan. */
export function unknownToday(session: Session, name: string | undefined): Problem[] {
  const { model } = session;
  const cell = cellNamed(model, name ?? '');
  if (cell === undefined) return [];
  return sidesOf(session).flatMap(({ plan, values }) => {
    const error = values.errors.get(cell.id);
    if (error === undefined) return [];
    const sentence = wording`${errorSentence(error, cell.id, model.cells)} at today’s values in plan ${plan.name}.`;
    return [problem(error.code, sentence, { row: cell.row, column: '', cell: cell.name })];
  });
}

/** The question that `--result` asks. */
export function cliQuestion(session: Session, name: string | undefined): Question {
  if (name === undefined) throw new UsageError(wording`option missing: --result. Name the cell to look at.`);
  const { model, plan, against, values, againstValues } = session;
  const cell = cellOf(model, name, 'result');
  if (sidesOf(session).some((side) => givesTruth(side.plan, cell.id)))
    throw new UsageError(wording`--result is true or false: ${name}. Name a cell that holds a number.`);
  return question({ model, result: cell.id, plan, against }, values, againstValues);
}

/** The input that an option names, with the plans in which its change is seen. */
export function inputOf({ view }: Question, option: string, name: string | undefined): Lever {
  if (name === undefined) throw new UsageError(wording`option missing: --${option}. Name an input.`);
  const found = lever(view, cellOf(view.model, name, option).id);
  if (found !== undefined) return found;
  throw new UsageError(wording`--${option} is no input in plan ${view.plan.name}: ${name}. Name an input.`);
}

/** The unit of a question's result, as text. */
export function resultUnit({ view }: Question): string {
  return unitOf(view.model.cells[view.result]).text;
}
