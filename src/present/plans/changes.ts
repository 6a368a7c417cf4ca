import type { Problem } from '../../core/problem';
import { withoutPlan, withPlan, withPlanMoved, withPlanRenamed } from '../../model/change/plans';
import { planOfColumn, type Sheet } from '../../model/sheet';
import { say, sentences, type Phrase } from '../text/phrase';
import { formFaults, isUnnamed, type PlanForm } from './form';

/** A sheet with its plans changed, and what is said of it. */
export interface PlansChanged {
  readonly sheet: Sheet;
  readonly done: Phrase;
}

function namesOf({ columns }: Sheet): string[] {
  return columns.flatMap((column) => planOfColumn(column) ?? []);
}

/** Said where another plan than before has come to be the reference. */
function newReference(before: Sheet, after: Sheet): Phrase {
  const [was, is] = [namesOf(before)[0], namesOf(after)[0]];
  return was === is || is === undefined ? [] : say`${is} is the reference now.`;
}

/** A sheet in which what a form asks for is done; undefined while its names are at fault, or where nothing changes. */
export function afterForm(sheet: Sheet, form: PlanForm): PlansChanged | undefined {
  const faults = formFaults(sheet, form);
  if (faults.name !== '' || faults.first !== '') return undefined;
  const name = form.name.trim();
  const from = form.does === 'copy' && isUnnamed(sheet) ? form.first.trim() : form.plan;
  const changed: Sheet | Problem =
    form.does === 'copy' ? withPlan(sheet, from, name) : withPlanRenamed(sheet, from, name);
  if ('code' in changed || changed === sheet) return undefined;
  if (form.does === 'copy')
    return { sheet: changed, done: say`${name} is a copy of ${from}: the two are compared now.` };
  const done = isUnnamed(sheet) ? say`The plan is called ${name} now.` : say`${form.plan} is called ${name} now.`;
  return { sheet: changed, done };
}

/** A sheet with a plan one place earlier (−1) or later (1); undefined where there is no such place. */
export function afterMove(sheet: Sheet, plan: string, by: -1 | 1): PlansChanged | undefined {
  const changed = withPlanMoved(sheet, plan, by);
  if (changed === sheet) return undefined;
  const moved = by === -1 ? say`${plan} stands one place earlier.` : say`${plan} stands one place later.`;
  return { sheet: changed, done: sentences(moved, newReference(sheet, changed)) };
}

/** A sheet without a plan; undefined where it is the only one. */
export function afterRemoval(sheet: Sheet, plan: string): PlansChanged | undefined {
  const changed = withoutPlan(sheet, plan);
  if (changed === sheet) return undefined;
  return { sheet: changed, done: sentences(say`${plan} is removed.`, newReference(sheet, changed)) };
}

/** Said once a plan uses what is shared again. */
export function sharedAgain(label: string, plan: string): Phrase {
  return say`${label} is shared again in ${plan}.`;
}
