import { entryTexts } from './entryTexts';
import { isHiddenError, type ShownValue } from './shownValue';
import type { LinkedPhrase } from '../text/linkedPhrase';
import { plainly } from '../text/phrase';
import { letterOf } from '../text/planLetter';
import type { Content } from '../../model/content';
import { cellNamed, type Model } from '../../model/model';
import type { Cell } from '../../model/cell';

/** A short remark below an entry's label on where a plan takes the entry from. */
export interface Remark {
  /** The plan's letter; blank where it is the same in all. */
  readonly letter: string;
  readonly kind: 'own' | 'from' | 'fault';
  readonly phrase: LinkedPhrase;
  /** The entry that the link in it leads to. */
  readonly cell: Cell | undefined;
}

export function remarkText({ phrase }: Remark): string {
  return phrase.map(({ text }) => text).join('');
}

/** The cell that a formula consists of; undefined where it holds anything else. */
export function referenceOf(model: Model, content: Content | undefined): Cell | undefined {
  return content?.kind === 'calculated' ? cellNamed(model, content.text) : undefined;
}

function remarkOf(model: Model, cell: Cell, plan: number, letter: string, shown: ShownValue): Remark | undefined {
  const { content, error } = shown;
  if (isHiddenError(error)) return undefined;
  if (error !== undefined) {
    const cause = error.cause === cell.id ? undefined : model.cells[error.cause];
    const phrase = cause === undefined ? plainly(error.message) : entryTexts.cannotWithout(cause.label);
    return { letter, kind: 'fault', phrase, cell: cause };
  }
  if (content?.kind === 'input' && content.own) {
    const phrase = plainly(entryTexts.ownOf(model.plans[plan]?.name ?? ''));
    return { letter, kind: 'own', phrase, cell: undefined };
  }
  const reference = referenceOf(model, content);
  return reference && { letter, kind: 'from', phrase: entryTexts.from(reference.label), cell: reference };
}

/** The remarks of an entry; one that holds for every plan is given once. */
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
  const same = found.length === columns.length && new Set(found.map(remarkText)).size === 1;
  return same ? found.slice(0, 1).map((remark) => ({ ...remark, letter: '' })) : found;
}

/** Whether two lists of remarks read the same. */
export function sameRemarks(a: readonly Remark[], b: readonly Remark[]): boolean {
  return (
    a.length === b.length && a.every((one, i) => one.letter === b[i]?.letter && remarkText(one) === remarkText(b[i]))
  );
}
