import { wording } from '../../language/wording';
import type { Cell } from '../../model/cell';
import type { Content } from '../../model/content';
import type { Model } from '../../model/model';
import { say, type Phrase } from '../text/phrase';
import { comparedIn, type ComparedEntry, type PlanPair } from '../theCase/comparedEntries';

/** An entry that is filled by something else in one plan than in another. */
export interface DifferingEntry extends ComparedEntry {
  /** Whether both come to what reads the same, by another formula or a number in a formula's place. */
  readonly isAlike: boolean;
}

/** Whether one thing fills an entry in two plans: numbers by their value, formulas by their text. */
function isSameContent(a: Content | undefined, b: Content | undefined): boolean {
  if (a?.kind === 'input' && b?.kind === 'input') return a.number.eq(b.number);
  return a?.text === b?.text;
}

/** The entries that two plans, by index, are given differently; what follows from them is not among them. */
export function differingCells({ cells, plans }: Model, plan: number, other: number): Cell[] {
  const [own, others] = [plans[plan]?.contents ?? [], plans[other]?.contents ?? []];
  return cells.filter(({ id }) => !isSameContent(own[id], others[id]));
}

export function differingEntries(pair: PlanPair): DifferingEntry[] {
  const [plan, other] = pair.plans;
  return differingCells(pair.model, plan, other).map((cell) => {
    const entry = comparedIn(pair, cell);
    return { ...entry, isAlike: entry.values[0] === entry.values[1] };
  });
}

function entriesOf(count: number): string {
  return count === 1 ? wording`one entry` : wording`${count} entries`;
}

/** Beside a plan's name: in how much it is not as the reference is. */
export function differsBy(count: number): string {
  return count === 0 ? wording`the same as the reference` : wording`differs in ${entriesOf(count)}`;
}

/** Above the table of what differs. @param isReference whether the plan is the reference itself */
export function differencesSentence(plan: string, reference: string, count: number, isReference: boolean): Phrase {
  if (isReference) return say`${plan} is the reference itself. Choose another plan to see how it differs.`;
  if (count === 0) return say`Nothing differs: ${plan} is filled as ${reference}, the reference, is.`;
  const entries = entriesOf(count);
  return count === 1
    ? say`${plan} is given ${entries} otherwise than ${reference}, the reference; all other differences follow from it.`
    : say`${plan} is given ${entries} otherwise than ${reference}, the reference; all other differences follow from them.`;
}
