import { wording } from '../../language/wording';
import { isQuantity, type Cell } from '../../model/cell';
import { reach } from '../../model/graph';
import { isInputInAny, type Model, type Plan } from '../../model/model';
import { headlineTexts } from '../page/headlineTexts';

/** Entries under their heading, in file order. */
export interface EntryGroup {
  readonly heading: string;
  readonly cells: readonly Cell[];
}

function grouped(cells: readonly Cell[]): EntryGroup[] {
  const groups = new Map<string, Cell[]>();
  for (const cell of cells) groups.set(cell.group, [...(groups.get(cell.group) ?? []), cell]);
  return [...groups].map(([heading, members]) => ({
    heading: heading === '' ? wording`Other` : heading,
    cells: members,
  }));
}

/** Whether an entry is calculated, and a number, in a plan. */
function isResult(plan: Plan | undefined, id: number): boolean {
  const content = plan?.contents[id];
  return content?.kind === 'calculated' && content.gives === 'number';
}

/** The results that can be asked about: numbers that one of some plans calculates, headlines first. */
export function resultGroups(model: Model, plans: readonly number[]): EntryGroup[] {
  const all = model.cells.filter(({ id }) => plans.some((plan) => isResult(model.plans[plan], id)));
  const headlines = all.filter(({ role }) => role === 'headline');
  const others = grouped(all.filter(({ role }) => role !== 'headline'));
  return headlines.length === 0 ? others : [{ heading: headlineTexts.heading, cells: headlines }, ...others];
}

/** The inputs of a plan, decisions too, in file order. */
export function inputsOf({ cells }: Model, { contents }: Plan): Cell[] {
  return cells.filter(({ id }) => contents[id]?.kind === 'input');
}

/** The inputs that can be moved: every input of a plan, decisions too. */
export function inputGroups(model: Model, plan: Plan): EntryGroup[] {
  return grouped(inputsOf(model, plan));
}

/** The inputs of a plan that can be moved over a range. */
export function quantityGroups(model: Model, plan: Plan): EntryGroup[] {
  return grouped(inputsOf(model, plan).filter(isQuantity));
}

/** What is an input in any plan. */
export function anyInputGroups({ cells, plans }: Model): EntryGroup[] {
  return grouped(cells.filter(({ id }) => isInputInAny(plans, id)));
}

/** Every entry. */
export function allGroups({ cells }: Model): EntryGroup[] {
  return grouped(cells);
}

/** The entry of a name among some groups, else the first of all. */
export function chosenEntry(groups: readonly EntryGroup[], name: string): Cell | undefined {
  const all = groups.flatMap(({ cells }) => cells);
  return all.find((cell) => cell.name === name) ?? all[0];
}

/** The entries that an input feeds in any of some plans. */
export function affectedBy(plans: readonly (Plan | undefined)[], input: number): ReadonlySet<number> {
  return new Set(plans.flatMap((plan) => [...reach([input], plan?.structure.feeds ?? [])]));
}
