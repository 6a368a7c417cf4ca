import { planNameFault } from '../../model/change/plans';
import { planOfColumn, type Sheet } from '../../model/sheet';
import { plansTexts } from './texts';

/** What somebody is typing to copy a plan or to give it another name. */
export interface PlanForm {
  readonly does: 'copy' | 'rename';
  /** Name of the plan. */
  readonly plan: string;
  /** The name that is typed: the copy's, or the plan's new one. */
  readonly name: string;
  /** With a copy of a plan that the file gives no name: the name that it gets. */
  readonly first: string;
}

/** Whether the file gives no plan a name: then it has one plan, and a copy names both. */
export function isUnnamed({ columns }: Sheet): boolean {
  return columns.every((column) => planOfColumn(column) === undefined);
}

/** A plan's name, without a number at its end, followed by the first number from 2 with which no plan has it. */
export function copyName(plan: string, taken: readonly string[]): string {
  const name = plan.replace(/(?<=\S) \d+$/, '');
  for (let number = 2; ; number += 1) {
    const proposed = `${name} ${number}`;
    if (!taken.includes(proposed)) return proposed;
  }
}

/** What a form begins with. @param plans names of all plans of the sheet */
export function emptyForm(does: PlanForm['does'], plan: string, sheet: Sheet, plans: readonly string[]): PlanForm {
  if (isUnnamed(sheet)) return { does, plan, name: '', first: '' };
  return { does, plan, name: does === 'copy' ? copyName(plan, plans) : plan, first: '' };
}

function faultOf(sheet: Sheet, name: string, column?: string): string {
  if (name.trim() === '') return plansTexts.noName;
  return planNameFault(sheet, name, column)?.message ?? '';
}

/** What is wrong with the names of a form, by its field; blank where nothing is. */
export function formFaults(sheet: Sheet, { does, plan, name, first }: PlanForm): { name: string; first: string } {
  if (does === 'rename') {
    const column = sheet.columns.find((one) => planOfColumn(one) === plan);
    return { name: faultOf(sheet, name, column), first: '' };
  }
  if (!isUnnamed(sheet)) return { name: faultOf(sheet, name), first: '' };
  const other = { ...sheet, columns: [...sheet.columns, `plan: ${first.trim()}`] };
  return { name: faultOf(other, name), first: faultOf(sheet, first) };
}

/** A form as a text that can be kept; blank for none. */
export function formText(form: PlanForm | undefined): string {
  return form === undefined ? '' : JSON.stringify([form.does, form.plan, form.name, form.first]);
}

/** The form of a kept text; undefined for any other text. */
export function formOf(text: string): PlanForm | undefined {
  if (!text.startsWith('[')) return undefined;
  try {
    const [does, plan, name, first] = JSON.parse(text) as unknown[];
    const isForm =
      (does === 'copy' || does === 'rename') && [plan, name, first].every((one) => typeof one === 'string');
    return isForm ? { does, plan: plan as string, name: name as string, first: first as string } : undefined;
  } catch {
    return undefined;
  }
}
