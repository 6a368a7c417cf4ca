import type { ShownValue } from './shownValue';
import { letterOf } from '../text/planLetter';
import type { Content } from '../../model/content';
import { cellNamed, type Model } from '../../model/model';
import type { Cell } from '../../model/cell';

/** A short word below an entry's label about where a plan takes it from. */
export interface Remark {
  /** The plan's letter; blank where it is the same in all. */
  readonly letter: string;
  readonly kind: 'own' | 'from' | 'fault';
  readonly text: string;
  /** The entry that the remark names. */
  readonly cell: Cell | undefined;
}

/** What stands before the name of the entry that a remark leads to. */
export const beforeName = { own: '', from: 'from ', fault: 'cannot be computed without ' } as const;

/** The cell that a formula names and nothing else. */
export function referenceOf(model: Model, content: Content | undefined): Cell | undefined {
  return content?.kind === 'calculated' ? cellNamed(model, content.text) : undefined;
}

function remarkOf(model: Model, cell: Cell, plan: number, letter: string, shown: ShownValue): Remark | undefined {
  const { content, error } = shown;
  if (error !== undefined) {
    const cause = error.cause === cell.id ? undefined : model.cells[error.cause];
    const text = cause === undefined ? error.message : `${beforeName.fault}${cause.label}`;
    return { letter, kind: 'fault', text, cell: cause };
  }
  if (content?.kind === 'input' && content.own) {
    return { letter, kind: 'own', text: `own number of plan ${model.plans[plan]?.name ?? ''}`, cell: undefined };
  }
  const reference = referenceOf(model, content);
  return reference && { letter, kind: 'from', text: `${beforeName.from}${reference.label}`, cell: reference };
}

/** The remarks of an entry; one that says the same of every plan is said once. */
export function remarksOf(
  model: Model,
  cell: Cell,
  columns: readonly number[],
  shown: readonly ShownValue[],
): readonly Remark[] {
  const found = columns.flatMap((plan, column) => {
    const one = shown[column];
    return (one && remarkOf(model, cell, plan, letterOf(column, columns.length), one)) ?? [];
  });
  const same = found.length === columns.length && found.every(({ text }) => text === found[0]?.text);
  return same ? found.slice(0, 1).map((remark) => ({ ...remark, letter: '' })) : found;
}

/** Whether two lists of remarks read the same. */
export function sameRemarks(a: readonly Remark[], b: readonly Remark[]): boolean {
  return a.length === b.length && a.every(({ letter, text }, i) => letter === b[i]?.letter && text === b[i].text);
}
